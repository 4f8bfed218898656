#include "tests/bench/page_drag.h"

#include "tests/bench/drag_measure.h"
#include "tests/support/hand_learner.h"
#include "tests/support/open_window.h"

namespace fb::bench {

namespace page_drag_detail {

Preferences onTheHip(int textPercent)
{
    Preferences preferences = test::plainPreferences();
    preferences.byHand = true;
    preferences.textPercent = textPercent;
    preferences.mix = {SiteSet::only(Site::Ventrogluteal), false};
    preferences.own.choose(Convention::VentroglutealHand);
    return preferences;
}

}  // namespace page_drag_detail

void measurePage(QSize window, int textPercent, double zoom)
{
    test::OpenWindow open(page_drag_detail::onTheHip(textPercent), window);
    auto& plate = *open.find<PlateView>("plate");
    test::HandLearner learner(open.practice());
    QTextStream(stdout) << "page " << window.width() << "x" << window.height() << ", plate " << plate.width()
                        << "x" << plate.height() << ", text " << textPercent << " %, zoom " << zoom << "\n";
    learner.plant();
    learner.build();
    const auto settled = [&plate] { return plate.isSharp() && plate.isHeldSharp(); };
    waitFor(settled);
    plate.zoomBy(zoom);
    waitFor(settled);
    const auto drag = [&](const char* what, Handle handle) {
        learner.set(handle);
        waitFor(settled);
        const auto& handles = open.state().byHand->handles;
        const auto found = std::ranges::find(handles, handle, &BuildHandle::handle);
        measureDrag(plate, what, plate.toWidget(found->cm.value()), window.height() / 14.0);
        learner.set(handle);
    };
    drag("palm slides", Handle::Palm);
    drag("index turns the hand", Handle::IndexTip);
    drag("middle finger opens", Handle::MiddleTip);
}

}  // namespace fb::bench
