// All steps in a row under the picture, each a thumbnail with its number and name; back and next at its ends.
// Thumbnails are painted beside the window's thread once a body rests.
#pragma once

#include <QTimer>
#include <QWidget>
#include <atomic>
#include <memory>

#include "app/demonstrate/step_thumbs.h"

class QListWidget;
class QPushButton;

namespace fb {

class LecturePresenter;
struct LectureState;

class StepRail : public QWidget {
    Q_OBJECT

public:
    static constexpr int kThumbRole = Qt::UserRole;  // of a step's item: its picture

    explicit StepRail(LecturePresenter& presenter, QWidget* parent = nullptr);
    ~StepRail() override;

    void useLibrary(const std::shared_ptr<const Library>& library);
    void showState();
    void setScheme(const Scheme& scheme);

Q_SIGNALS:
    void thumbsPainted();

protected:
    void changeEvent(QEvent* event) override;

private:
    void layOut();
    void say();
    void fit();  // to the size of letters
    void fill(const LectureState& state);
    void askThumbs();
    void showThumbs(const std::vector<QImage>& thumbs);
    [[nodiscard]] ThumbAsk thumbAsk() const;

    LecturePresenter& m_presenter;
    QListWidget* m_list;
    QPushButton* m_back;
    QPushButton* m_next;
    Scheme m_scheme;
    std::shared_ptr<const Library> m_library;
    std::vector<LectureStep> m_steps;  // that are in the list
    Convention m_convention{};         // which they belong to: it names them
    ThumbAsk m_asked;
    QTimer m_rest;
    std::shared_ptr<std::atomic_bool> m_cancelled;
};

}  // namespace fb
