// A demonstration: which site and body, which step, what is compared, pointed at, drawn and asked. Pages and
// windows call it and read its state; it moves values (a body that glides, a hand that is laid) and never a
// picture.
#pragma once

#include <QObject>
#include <QTimer>

#include "app/doors/clock.h"
#include "app/lecture/bodies.h"
#include "app/lecture/lecture_state.h"

namespace fb {

class LecturePresenter : public QObject {
    Q_OBJECT

public:
    static constexpr int kFrameMs = 16;
    static constexpr int kGlideMs = 700;  // from one body to another
    static constexpr int kStepMs = 1200;  // a hand or a line on its way

    // The doors outlive it.
    LecturePresenter(Bodies& bodies, Clock& clock, QObject* parent = nullptr);

    // Again with another policy: step, body and strokes stay.
    void useLibrary(const std::shared_ptr<const Library>& library, const Policy& policy);
    // Where the platform asks for no motion everything arrives at once.
    void setCalm(bool calm);

    [[nodiscard]] const LectureState& state() const { return m_state; }
    [[nodiscard]] bool isGliding() const;

    // A site with its asked view and its convention by the policy; the first step, no strokes, no room marks.
    void openSite(Site site);
    void setConvention(Convention convention);  // of the same site; the step stays where it can
    void setView(View view);                    // of the same site: for a view without marks, too
    void setSide(Side side);
    void setSkinTone(int tone);
    void setLayerShown(Layer layer, bool shown);

    void next();  // finishes an animation that runs, else goes on; at the last step nothing
    void back();
    void goTo(int step);
    void replay();  // the step's animation once more

    // While a slider is held, values are shown as they come; letGo() makes them sharp.
    void setBody(const BodyValues& values);
    void letGo();
    void glideTo(const BodyValues& values);
    void setStoutness(Stoutness stoutness);  // glides
    void pin();  // keeps the body of now to be compared with; compares side by side if nothing was
    void unpin();
    void swapPinned();  // glides to the pinned body and pins the one that was shown
    void setCompare(Compare compare);
    void compareConvention(Convention other);

    void setBlank(bool blank);
    void setTool(LectureTool tool);
    void setSpotlight(bool on);
    void setPen(PenInk ink, PenLine line);
    void setStrokesStay(bool stay);
    void point(std::optional<QPointF> cm);  // the pointer moved; nullopt: it left the plate
    void press(QPointF cm);  // begins a stroke, erases, or takes a volunteer's point, by the tool
    void drag(QPointF cm);
    void release();
    void undoStroke();
    void wipe();  // all strokes

    void nameRoomMark(int index, const QString& name);
    void takeRoomMarks(std::vector<RoomMark> marks);  // in place of those that are there
    void dropRoomMark(int index);
    void clearRoom();
    void reveal(bool revealed);

    // Since the demonstration was opened or the clock was set back.
    [[nodiscard]] Ms elapsed() const;
    void restartClock();
    void tell(const Fault& fault);
    void dismissNotice();

Q_SIGNALS:
    void changed();       // anything but the following
    void pointerMoved();  // only the pointer, the stroke being drawn, or a frame of an animation

private:
    struct Glide {
        BodyValues from, to;
        Ms since{0};
    };
    void askShown();
    void askBeside();
    void gotShown(const Result<std::shared_ptr<const LectureBody>>& body);
    void tick();
    void goOn(int step);
    void gradeRoom();

    Bodies& m_bodies;
    Clock& m_clock;
    std::shared_ptr<const Library> m_library;
    LectureState m_state;
    std::optional<Glide> m_glide;
    std::optional<Ms> m_stepSince;
    std::optional<Convention> m_other;
    QTimer m_tick;
    Ms m_began{0};
    bool m_calm = false;
    bool m_wasOpened = false;
};

}  // namespace fb
