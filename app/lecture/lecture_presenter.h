// A demonstration: which site and body, which step, what is compared, pointed at, drawn and asked. Pages and
// windows call it and read its state; it moves values (a body that glides, a hand that is laid) and never a
// picture.
//
// What is asked for (convention, view, side, body) goes ahead of what is shown: steps, strokes and room marks
// are always those of `shown`, and change with it. A body that cannot be made is told in the notice; the
// shown one stays, and what was asked for goes back to it; where it was to stand beside, nothing is compared.
#pragma once

#include <QObject>
#include <QTimer>
#include <map>

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
    [[nodiscard]] std::shared_ptr<const Library> library() const { return m_library; }  // null: not yet
    [[nodiscard]] Site site() const { return siteOf(m_state.convention); }
    // What OtherConvention compares with, from the moment it is chosen.
    [[nodiscard]] std::optional<Convention> otherConvention() const { return m_other; }
    [[nodiscard]] bool isGliding() const { return m_glide.has_value(); }
    [[nodiscard]] bool isStepMoving() const { return m_stepSince.has_value(); }
    [[nodiscard]] bool isBinding() const { return m_isBinding; }  // long strokes to the patient

    // A site with its asked view and its convention by the policy; the first step, no strokes, no room marks.
    // Before the library is there it is remembered. Steps asked for before its body is there are gone to
    // then.
    void openSite(Site site);
    void setConvention(Convention convention);  // of the same site; the step stays where it can
    // Of the same site: for a view without marks, too. Every view has strokes and room marks of its own.
    void setView(View view);
    void setSide(Side side);
    void setSkinTone(int tone);
    void setLayerShown(Layer layer, bool shown);

    void next();          // finishes an animation that runs, else goes on; at the last step nothing
    void back();          // at once, whatever runs
    void goTo(int step);  // a later step comes with its animation; held to the steps there are
    void replay();        // the step's animation once more

    // While a slider is held, values are shown as they come; letGo() makes them sharp.
    void setBody(const BodyValues& values);
    void letGo();
    void glideTo(const BodyValues& values);
    void setStoutness(Stoutness stoutness);  // glides
    void pin();  // keeps the body of now to be compared with; compares side by side if nothing was
    void unpin();
    void swapPinned();  // glides to the pinned body and pins the one that was shown
    // Nothing happens where a body has to be pinned first. OtherConvention: the one chosen last, else the
    // first other one.
    void setCompare(Compare compare);
    void compareConvention(Convention other);

    void setBlank(bool blank);
    void setTool(LectureTool tool);
    void setSpotlight(bool on);
    void setPen(PenInk ink, PenLine line);
    void setStrokesStay(bool stay);         // strokes that are there, too
    void point(std::optional<QPointF> cm);  // the pointer moved; nullopt: it left the plate
    void press(QPointF cm);  // begins a stroke, erases, or takes a volunteer's point, by the tool
    void drag(QPointF cm);
    void release();
    void undoStroke();
    void wipe();  // all strokes

    void nameRoomMark(int index, const QString& name);
    // In place of those that are there; of more than kMostRoomMarks none is taken, which is told.
    void takeRoomMarks(std::vector<RoomMark> marks);
    void dropRoomMark(int index);
    void clearRoom();            // and nothing is revealed
    void reveal(bool revealed);  // every mark with its grade, also of bodies to come

    // Since the demonstration was opened or the clock was set back.
    [[nodiscard]] Ms elapsed() const;
    void restartClock();
    void tell(const Fault& fault);
    void dismissNotice();

Q_SIGNALS:
    void changed();       // anything but the following; a new body, too
    void pointerMoved();  // only the pointer, the stroke being drawn, or a frame of a step's animation

private:
    struct Glide {
        BodyValues from, to;
        Ms since{0};
    };
    // What one view holds while another is shown.
    struct Sheet {
        QVector<PenStroke> strokes;
        std::vector<RoomMark> room;
        bool revealed = false;
    };

    void askShown();
    void askBeside();
    void gotShown(const BodyAsk& ask, const Result<std::shared_ptr<const LectureBody>>& body);
    void gotBeside(const BodyAsk& ask, const Result<std::shared_ptr<const LectureBody>>& body);
    [[nodiscard]] static bool isWanted(const BodyAsk& ask, const std::optional<BodyAsk>& newest,
                                       const std::shared_ptr<const LectureBody>& there);
    void takeShown(const std::shared_ptr<const LectureBody>& body);
    void takeSteps(const std::shared_ptr<const LectureBody>& before);
    void takeMarks(const std::shared_ptr<const LectureBody>& before);
    void goBackToShown();
    void compareAgain();
    void measure();
    [[nodiscard]] static bool isSeenAs(const BodyAsk& a, const BodyAsk& b);  // view and side
    void settle();
    void startGlide(const BodyValues& to);
    [[nodiscard]] BodyValues goal() const { return m_glide ? m_glide->to : m_state.body; }
    void useConvention(Convention convention);

    void tick();
    void goOn(int step);
    void rest(int step);
    void tickGlide(Ms now);
    void tickStep(Ms now);

    void bindStrokes();
    void finishStroke();
    [[nodiscard]] bool erase(QPointF cm);

    [[nodiscard]] bool takesMarks();
    [[nodiscard]] bool hasRoomFor(std::size_t marks);
    void addRoomMark(QPointF cm);
    void gradeRoom();

    Bodies& m_bodies;
    Clock& m_clock;
    std::shared_ptr<const Library> m_library;
    LectureState m_state;
    std::optional<BodyAsk> m_asked;        // the newest; of the shown body once it is there
    std::optional<BodyAsk> m_besideAsked;  // likewise
    std::optional<int> m_opening;          // a site is being opened: the step to begin with
    std::map<View, Sheet> m_sheets;        // of the views that are not shown
    std::optional<Glide> m_glide;
    std::optional<Ms> m_stepSince;
    std::optional<Convention> m_other;
    QTimer m_tick;
    Ms m_began{0};
    bool m_calm = false;
    bool m_wasOpened = false;
    bool m_isHeld = false;
    bool m_erases = false;
    bool m_isBinding = false;      // strokes, little by little
    bool m_besideIsOther = false;  // what stands beside, or is to
};

}  // namespace fb
