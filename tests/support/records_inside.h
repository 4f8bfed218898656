// The presenter of the records with a sample lab, inside the gate unless a test stays before it.
#pragma once

#include "app/records/records_presenter.h"
#include "tests/support/sample_records.h"

namespace fb::test {

struct Inside {
    explicit Inside(bool opens = true) : presenter(records, records.clock)
    {
        presenter.useLibrary(sharedLibrary(), sharedLibrary()->defaultPolicy());
        presenter.enter();
        if (opens)
            presenter.open(1, QString::fromLatin1(kPin));
    }
    [[nodiscard]] const RecordsState& state() const { return presenter.state(); }

    SampleRecords records;
    RecordsPresenter presenter;
};

[[nodiscard]] inline bool isEmptyHanded(const RecordsState& state)
{
    return !state.board && !state.found && !state.history && !state.opened && !state.item && !state.replay &&
           state.sheets.empty() && !state.who && state.sheet.isEmpty() && state.filter.words.isEmpty();
}

}  // namespace fb::test
