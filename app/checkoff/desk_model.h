// The students of the desk as rows, with how each stands, and what a search leaves of them, sorted by name as
// the language sorts.
#pragma once

#include <QAbstractTableModel>
#include <QCollator>
#include <QSortFilterProxyModel>
#include <QStringList>
#include <vector>

#include "app/doors/records.h"
#include "app/records/records_look.h"

namespace fb {

class DeskModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { NameColumn, IdColumn, SectionColumn, StandingColumn, ColumnCount };

    explicit DeskModel(QObject* parent = nullptr);

    void setStudents(const std::vector<StudentStanding>& students);  // the same ones again change nothing
    void setScheme(const Scheme& scheme);
    void retranslate();
    [[nodiscard]] const StudentStanding& at(int row) const;
    [[nodiscard]] int rowOf(const QString& id) const;  // -1: nobody

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

private:
    std::vector<StudentStanding> m_students;
    RecordIcons m_icons;
};

class DeskFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit DeskFilter(DeskModel& model, QObject* parent = nullptr);

    void retranslate();                   // sorts as the program's language now does
    void setWords(const QString& words);  // every one must be in the name, the id or the section

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    [[nodiscard]] bool lessThan(const QModelIndex& one, const QModelIndex& other) const override;

private:
    const DeskModel& m_model;
    QCollator m_order;
    QStringList m_words;
};

}  // namespace fb
