// The speaker's page in a window of its own, with bodies that are made at once, a clock that stands and
// screens that a test plugs in.
#pragma once

#include <QApplication>
#include <QTest>
#include <QVBoxLayout>

#include "app/demonstrate/screens.h"
#include "app/demonstrate/speaker_page.h"
#include "app/look/style.h"
#include "tests/support/fakes.h"
#include "tests/support/lecture_sample.h"

namespace fb::test {

class PluggedScreens : public Screens {
public:
    [[nodiscard]] QVector<ScreenPlace> all() const override { return places; }
    void plug(const QVector<ScreenPlace>& now)
    {
        places = now;
        Q_EMIT changed();
    }

    QVector<ScreenPlace> places{{QStringLiteral("desk"), QRect(0, 0, 1280, 800)}};
};

[[nodiscard]] inline QVector<ScreenPlace> twoScreens()
{
    return {{QStringLiteral("desk"), QRect(0, 0, 1280, 800)},
            {QStringLiteral("projector"), QRect(1280, 0, 1024, 768)}};
}

struct ShownSpeaker {
    explicit ShownSpeaker(Site site = Site::Deltoid, QSize size = {1280, 720},
                          PaletteKind kind = PaletteKind::Light, double text = 1.0)
        : scheme(styled(kind, text))
    {
        page = new SpeakerPage(sample.presenter, dialogs, screens, &window);
        auto* rows = new QVBoxLayout(&window);
        rows->setContentsMargins(0, 0, 0, 0);
        rows->addWidget(page);
        page->setScheme(scheme);
        page->useLibrary(lectureLibrary());
        page->useNotes(SpeakerNotes::shipped());
        sample.presenter.useLibrary(lectureLibrary(), lectureLibrary()->defaultPolicy());
        sample.presenter.openSite(site);
        window.resize(size);
        window.show();
        isReady = QTest::qWaitForWindowActive(&window);
        sample.presenter.setCalm(true);
        page->setFocus();
    }
    ~ShownSpeaker() { delete page; }

    template <class Widget = QWidget>
    [[nodiscard]] Widget* find(const char* name)
    {
        return page->findChild<Widget*>(QLatin1String(name));
    }
    [[nodiscard]] const LectureState& state() const { return sample.state(); }
    // To whatever has the focus, as a keyboard does.
    void key(int which, Qt::KeyboardModifiers with = {})
    {
        QWidget* at = QApplication::focusWidget();
        QTest::keyClick(at ? at : &window, static_cast<Qt::Key>(which), with);
    }
    // By Tab alone; false: it is not reached in a whole round.
    bool tabTo(const QWidget* to)
    {
        constexpr int kMost = 120;
        for (int i = 0; i < kMost && QApplication::focusWidget() != to; ++i)
            key(Qt::Key_Tab);
        return QApplication::focusWidget() == to;
    }

    const Scheme scheme;  // first: a window that is there before a style keeps its letters
    LectureSample sample{std::nullopt};
    AnsweringDialogs dialogs;
    PluggedScreens screens;
    QWidget window;
    SpeakerPage* page = nullptr;
    bool isReady = false;

private:
    static Scheme styled(PaletteKind kind, double text)
    {
        applyStyle(*qApp, schemeOf(kind), text);
        return schemeOf(kind);
    }
};

}  // namespace fb::test
