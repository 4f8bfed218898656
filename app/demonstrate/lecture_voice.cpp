#include "app/demonstrate/lecture_voice.h"

#include <QCoreApplication>
#include <QStringList>

namespace fb {

namespace lecture_voice_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::LectureVoice)
};

QString nameOf(const LectureState& state)
{
    //: Name of the picture while the first body is being made.
    if (!state.ready || !state.shown || state.steps.empty())
        return Words::tr("Demonstration, not ready yet");
    //: %1: which step; %2: how many; %3: what it is called.
    return Words::tr("Step %1 of %2: %3")
        .arg(state.step + 1)
        .arg(state.steps.size())
        .arg(stepTitle(*state.shown, state.steps[static_cast<std::size_t>(state.step)]));
}

}  // namespace lecture_voice_detail

LectureVoice voiceOf(const LectureState& state, const LectureFace& face)
{
    using namespace lecture_voice_detail;
    LectureVoice voice{nameOf(state), {}};
    if (state.blank) {
        voice.description = Words::tr("The picture is blank.");
        return voice;
    }
    if (face.panes.empty())
        return voice;
    const LectureLook& look = face.panes.front().look;
    QStringList parts{look.heading, look.manner, look.caption};
    if (look.press)
        parts.append(spoken(*look.press));
    for (const LecturePane& pane : face.panes)
        parts.append(pane.name);
    for (const SceneShape& shape : face.panes.front().extra)
        parts.append(spoken(shape));
    parts.removeAll(QString());
    parts.removeDuplicates();
    voice.description = parts.join(QLatin1Char('\n'));
    return voice;
}

}  // namespace fb
