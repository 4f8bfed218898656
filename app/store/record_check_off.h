// A check-off from its beginning up to its signature, as it is kept: each event with what it changes in one
// transaction.
//
// An event like the last one kept, in every word and millisecond, is that one asked for again by somebody
// who was never answered: it is there already and is not doubled. (No two events of one check-off that
// mean something read alike.) Answers come in the order of their items, each once.
#pragma once

#include <QByteArray>
#include <QVariantList>
#include <future>
#include <optional>

#include "app/doors/records.h"
#include "app/store/record_values.h"
#include "app/store/store.h"

namespace fb {

// The faults of RecordKeeper::begin, and SheetNotReadable. Who has passed has no attempt left.
[[nodiscard]] Result<RunningCheckOff> beginCheckOff(Store& store, const CheckOffOrder& order,
                                                    const Moment& now);
// CheckOffOutOfOrder for one that is signed or was never begun, for an answer out of its order, and for the
// signature, which has its own way (record_signing.h).
[[nodiscard]] Result<bool> keepEvent(Store& store, qint64 checkOff, const CheckOffEvent& event,
                                     const Moment& now);

// What an event is written as; of an answer its row and what the log says of it too.
struct EventRows {
    QByteArray text;
    QVariantList columns;
    QString detail;
};
[[nodiscard]] EventRows rowsOf(const CheckOffEvent& event);
// As above, while another thread still makes the rows: the file is opened for writing meanwhile.
[[nodiscard]] Result<bool> keepEvent(Store& store, qint64 checkOff, const CheckOffEvent& event,
                                     const std::shared_future<EventRows>& coming, const Moment& now);

// Between two events, each of which tells the time too. Never less than is kept.
[[nodiscard]] Result<bool> keepCountedTime(Store& store, qint64 checkOff, Ms onScreen, Ms onManikin);

// The one that was begun and not signed.
[[nodiscard]] Result<std::optional<RunningCheckOff>> readRunning(const Store& store);
// EventNotReadable.
[[nodiscard]] Result<std::vector<CheckOffEvent>> readEvents(const Store& store, qint64 checkOff);

// In a transaction: the event itself, its seq counted from 1.
[[nodiscard]] Result<bool> addEvent(Store& store, qint64 checkOff, qint64 seq, const CheckOffEvent& event,
                                    const QString& text, const Moment& now);
// How the log calls it.
[[nodiscard]] QString objectName(qint64 checkOff);

}  // namespace fb
