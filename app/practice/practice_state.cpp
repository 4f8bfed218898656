#include "app/practice/practice_state.h"

namespace fb {

QSet<Layer> layersOf(Peel peel)
{
    switch (peel) {
    case Peel::Skin: return {Layer::Skin, Layer::Surface, Layer::Cloth};
    case Peel::Muscle: return {Layer::Muscle};
    case Peel::NervesAndVessels: return {Layer::Nerve, Layer::Vessel};
    case Peel::Bone: return {Layer::Bone};
    }
    return {};
}

QSet<Layer> allLayers() { return {kLayers.begin(), kLayers.end()}; }

bool isAnswering(Phase phase)
{
    return phase == Phase::Feeling || phase == Phase::Building || phase == Phase::Marking;
}

bool isRuledOut(const Request& request)
{
    return request.finding && rulesOut(*request.finding, request.site, request.patient.side());
}

}  // namespace fb
