// The observed steps of a sheet in their groups, in as many columns as there is room for, one of them the
// current one. Says what is answered; what is kept is shown to it.
//
// Once a step is answered the next one without an answer is current, so that one key a step is enough. The
// same answer again takes it back. The same key twice within kBounceMs is a slip and counts once.
#pragma once

#include <QElapsedTimer>
#include <QScrollArea>
#include <set>
#include <vector>

#include "app/checkoff/check_off_state.h"
#include "app/look/palette.h"
#include "app/words/check_off_words.h"

class QBoxLayout;
class QLabel;

namespace fb {

class StepRow;

class StepList : public QScrollArea {
    Q_OBJECT

public:
    static constexpr int kBounceMs = 200;

    explicit StepList(QWidget* parent = nullptr);

    void showState(const CheckOffState& state);
    void setScheme(const Scheme& scheme);
    void say();

    [[nodiscard]] const StepRow* current() const;  // null without steps
    [[nodiscard]] int answered() const;
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] int columns() const { return m_columns; }

    void answer(Seen seen);  // of the current step
    void move(int by);
    void goToFirstOpen();
    void editRemark();
    void focusCurrent();
    // It takes as much of this width as its columns are good for, and no more.
    void fit(int width);

Q_SIGNALS:
    void observeAsked(fb::ProcedureStep step, fb::Seen seen, const QString& remark);
    void withdrawAsked(fb::ProcedureStep step);
    void currentChanged();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Group {
        StepGroup which{};
        QWidget* head = nullptr;
        QLabel* name = nullptr;
        QLabel* count = nullptr;
        QWidget* again = nullptr;  // "Find the site (continued)"
        QLabel* againName = nullptr;
        std::vector<StepRow*> rows;
    };
    // A heading or a row; a column may begin at any but the first row of a group, and then says of which.
    struct Unit {
        QWidget* widget = nullptr;
        QWidget* again = nullptr;  // a row: the heading over it where it begins a column
        bool mayBegin = false;
    };
    void build(const std::vector<SheetStep>& steps);
    Group& groupFor(StepGroup which);
    void addRow(const SheetStep& step);
    void press(int row, Seen seen);
    void choose(int row, bool focus);
    void countGroups();
    void flow();
    void setWordy(int columnWidth);
    void setAir(int air);
    void layInto(const std::vector<int>& breaks);
    [[nodiscard]] std::vector<int> bestBreaks(int width, int columns) const;
    [[nodiscard]] int airFor(int width, const std::vector<int>& breaks) const;
    [[nodiscard]] int roomForSteps() const;
    [[nodiscard]] bool isAnswered(const StepRow& row) const;
    [[nodiscard]] int nextOpen(int from) const;
    [[nodiscard]] std::vector<int> heights(int width) const;
    [[nodiscard]] std::vector<int> headings(int width, bool whole) const;

    std::vector<SheetStep> m_steps;
    std::vector<Group> m_groups;
    std::vector<Unit> m_units;
    std::vector<StepRow*> m_rows;
    std::set<ProcedureStep> m_asked;  // on their way to the disk: they count as answered
    int m_current = 0;
    int m_columns = 0;
    std::vector<int> m_breaks;  // first unit of each column
    int m_air = 0;              // px more above and below each row
    int m_room = 0;             // px it may have; 0: whatever its layout gives
    QElapsedTimer m_since;
    std::optional<Seen> m_last;
    QBoxLayout* m_flow = nullptr;
    QWidget* m_content;
    Scheme m_scheme;
};

// Where each column begins (index into heights, the first 0) so that the tallest is as low as can be: at most
// so many columns. headings: by what a column is higher if it begins there; negative: none may.
[[nodiscard]] std::vector<int> columnBreaks(const std::vector<int>& heights, const std::vector<int>& headings,
                                            int columns);
[[nodiscard]] int tallestColumn(const std::vector<int>& heights, const std::vector<int>& headings,
                                const std::vector<int>& breaks);

}  // namespace fb
