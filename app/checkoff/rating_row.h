// The assessor's overall rating, 1 to 5 with words, beside the score and never part of it.
#pragma once

#include <QWidget>
#include <array>
#include <optional>

class QLabel;
class QRadioButton;

namespace fb {

inline constexpr int kRatingCount = 5;

class RatingRow : public QWidget {
    Q_OBJECT

public:
    explicit RatingRow(QWidget* parent = nullptr);

    [[nodiscard]] std::optional<int> rating() const;
    void showRating(std::optional<int> rating);  // asks nothing
    void choose(int rating);                     // as a press does
    void say();
    void focusFirst();

Q_SIGNALS:
    void chosen(int rating);
    void settled();  // by a press or a digit, not on the way through by arrows: the focus may go on

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLabel* m_title;
    std::array<QRadioButton*, kRatingCount> m_buttons{};
};

}  // namespace fb
