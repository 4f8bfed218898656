// The audience's window: nothing but the picture, full screen on the screen the speaker is not on; on one
// screen (or on two that show the same) it comes and goes with a key. It outlives a projector that is
// unplugged: then it is put away and comes back to the next second screen.
#pragma once

#include <QPointer>
#include <QWidget>

#include "app/demonstrate/screens.h"
#include "app/look/palette.h"

namespace fb {

class LecturePresenter;
class LectureView;

class AudienceWindow : public QWidget {
    Q_OBJECT

public:
    enum class Where {
        Closed,
        OtherScreen,  // full screen beside the speaker's
        OverSpeaker,  // one screen: it covers the speaker's window until the key is pressed again
        PutAway       // one screen, and the speaker's window is in front
    };

    AudienceWindow(LecturePresenter& presenter, Screens& screens);

    [[nodiscard]] Where where() const { return m_where; }
    // On another screen than that widget's window, where there is one; else over it.
    void open(QWidget* speaker);
    void close();
    void swap();  // one screen: over the speaker's window or away; with two: the screens are exchanged
    void setScheme(const Scheme& scheme);
    [[nodiscard]] LectureView& view() { return *m_view; }

Q_SIGNALS:
    void moved();       // where() is another
    void screenLost();  // told to the speaker, calmly

protected:
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void go(Where where);
    void showOn(const ScreenPlace& place);
    void screensChanged();
    void retranslate();
    [[nodiscard]] ScreenPlace speakersScreen() const;
    [[nodiscard]] QVector<ScreenPlace> otherScreens() const;

    Screens& m_screens;
    LectureView* m_view;
    QPointer<QWidget> m_speaker;
    Where m_where = Where::Closed;
};

}  // namespace fb
