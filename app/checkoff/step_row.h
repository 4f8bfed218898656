// One observed step on the manikin in one line: its name, whether it is critical, what was seen of it and
// when, and a remark. Shows what it is given and says what is pressed; knows no clock.
#pragma once

#include <QWidget>
#include <array>
#include <optional>

#include "app/look/palette.h"
#include "core/procedure/observed.h"

class QHBoxLayout;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace fb {

class SeenButton;

class StepRow : public QWidget {
    Q_OBJECT

public:
    explicit StepRow(const SheetStep& step, QWidget* parent = nullptr);

    [[nodiscard]] const SheetStep& step() const { return m_step; }
    [[nodiscard]] const std::optional<Observation>& observation() const { return m_seen; }
    // As it is to stand: the observation's, or what was written before there was one.
    [[nodiscard]] QString remark() const;

    void showSeen(const std::optional<Observation>& seen);
    void setCurrent(bool current);  // only the current row is reached by Tab
    void setWordy(bool wordy);      // words on its three buttons
    void setAir(int pixels);        // above and below
    void setScheme(const Scheme& scheme);
    void say();
    void editRemark();
    [[nodiscard]] bool editsRemark() const;

Q_SIGNALS:
    void chosen();  // a press on its name
    void seenPressed(fb::Seen seen);
    void remarkGiven(const QString& remark);  // of a step that was seen
    void remarkClosed();                      // the focus may go back

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void layOut();
    void takeRemark();
    void showRemark();
    void paintIcon();
    void paintName();

    SheetStep m_step;
    std::optional<Observation> m_seen;
    QString m_draft;
    QString m_written;
    bool m_current = false;
    bool m_wordy = false;
    QVBoxLayout* m_whole = nullptr;
    Scheme m_scheme;
    QLabel* m_critical;
    QLabel* m_name;
    QLabel* m_time;
    QLabel* m_remark;
    QLineEdit* m_edit;
    QWidget* m_beside;  // under the sign
    std::array<SeenButton*, kSeenCount> m_buttons{};
};

}  // namespace fb
