// What the finger feels, and the flags: a name to be chosen or typed for the place that is felt, and
// the flags that stand already.
#pragma once

#include <QWidget>
#include <vector>

#include "app/practice/practice_state.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace fb {

class FeelPanel : public QWidget {
    Q_OBJECT

public:
    explicit FeelPanel(QWidget* parent = nullptr);

    void showState(const PracticeState& state);  // nothing happens where nothing is found by hand
    void showFelt(const PracticeState& state);   // of that only what the finger feels
    // With a name chosen or typed, plants; else leads to the name.
    void plantOrAskName();

Q_SIGNALS:
    void plantAsked(const QString& name);
    void pullOutAsked(Landmark name);

protected:
    void changeEvent(QEvent* event) override;

private:
    struct FlagRow {
        Landmark name{};
        QLabel* words = nullptr;
        QPushButton* remove = nullptr;
    };
    void say();
    void offer(const std::vector<Landmark>& names);
    void showPlanted(const ByHandState& byHand);
    void makeRows(const std::vector<PlantedFlag>& flags);
    void plant();

    QLabel* m_felt;
    QLabel* m_how;
    QComboBox* m_name;
    QPushButton* m_plant;
    QLabel* m_planted;
    QLabel* m_flagsTitle;
    QGridLayout* m_grid;
    std::vector<FlagRow> m_rows;
    std::vector<Landmark> m_offered;
    std::vector<PlantedFlag> m_shownFlags;
};

}  // namespace fb
