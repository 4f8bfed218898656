// The hip's part of build_steps.h.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/build/hip_build.h"
#include "core/grade/build_steps.h"
#include "core/grade/flag_grade.h"

namespace fb {

namespace hip_grade_detail {

// A hand against the flawless one. The palm is off by where it has the place that belongs over the
// trochanter; the index fingertip by what is left of its own way from the spine.
class HandGrader {
public:
    explicit HandGrader(StepWriter& writer)
        : m_writer(writer),
          m_hers(*writer.hers().hand),
          m_wanted(*writer.flawless().hand),
          m_pose(poseOf(m_hers, writer.builder().hand)),
          m_wantedPose(poseOf(m_wanted, writer.builder().hand))
    {
        const Point trochanter = writer.target().landmarks.find("greater_trochanter")->second;
        const Point axis = unit(m_wantedPose.indexTip - m_wantedPose.wrist);
        const double along = dot(trochanter - m_wantedPose.wrist, axis);
        const Point spot = m_pose.wrist + unit(m_pose.indexTip - m_pose.wrist) * along;
        m_palmOff = spot - (m_wantedPose.wrist + axis * along);
        m_indexOff = m_pose.indexTip - m_wantedPose.indexTip;
        // A palm that is off takes the finger with it; that is the palm's slip and not the finger's.
        m_indexRight = std::min(length(m_indexOff), length(m_indexOff - m_palmOff)) <=
                       m_writer.limit(PolicyKey::BuildIndex) + kBorderTolerance;
        // A hand turned the wrong way about a palm that lies well is the finger's slip alone.
        const Point middleOff = m_hers.palm - m_wanted.palm;
        if (!m_indexRight && length(middleOff) < length(m_palmOff))
            m_palmOff = middleOff;
        // A palm with its middle over the trochanter lies as it is taught. If the finger does not reach the
        // spine from there, that is the finger's slip.
        const double limit = m_writer.limit(PolicyKey::BuildPalm) + kBorderTolerance;
        m_short = length(m_palmOff) > limit && distance(m_hers.palm, trochanter) <= limit;
        if (m_short) {
            m_palmOff = {};
            m_indexRight = false;
        }
    }

    void gradeAll()
    {
        gradeWhichHand();
        gradePalm();
        gradeIndex();
        gradeMiddle();
    }

private:
    static Point unit(Point way) { return way * (1.0 / length(way)); }

    [[nodiscard]] BuildStepGrade offBy(Slip slip, Point off) const
    {
        return m_writer.offPlace(slip, m_wanted.palm, m_wanted.palm + off);
    }
    [[nodiscard]] Build with(const FreeHand& hand) const
    {
        Build alone = m_writer.flawless();
        alone.hand = hand;
        return alone;
    }
    void gradeWhichHand()
    {
        if (m_hers.hand == m_wanted.hand)
            return m_writer.right(BuildStep::WhichHand);
        m_writer.slip(BuildStep::WhichHand, {{}, Slip::WrongHand, {}, {}, {}, {}, 0.0, {}},
                      with(swapped(m_wanted)));
    }
    void gradePalm()
    {
        const double off = length(m_palmOff);
        if (off <= m_writer.limit(PolicyKey::BuildPalm) + kBorderTolerance)
            return m_writer.right(BuildStep::Palm);
        m_writer.slip(BuildStep::Palm, offBy(Slip::PalmOff, m_palmOff),
                      with(slid(m_wanted, m_wanted.palm + m_palmOff)));
    }
    void gradeIndex()
    {
        if (m_indexRight)
            return carriedIndex();
        FreeHand turned = m_wanted;
        turned.turn = m_hers.turn;
        if (m_short)
            turned.palm = m_hers.palm;
        m_writer.slip(BuildStep::IndexFinger,
                      offBy(isOnCrest() ? Slip::IndexOnCrest : Slip::IndexOff, m_indexOff), with(turned));
    }
    void carriedIndex()
    {
        const double off = length(m_indexOff);
        if (off <= m_writer.limit(PolicyKey::BuildIndex) + kBorderTolerance)
            return m_writer.right(BuildStep::IndexFinger);
        m_writer.carried(BuildStep::IndexFinger,
                         waysOn(m_writer.target(), m_wanted.palm, m_wanted.palm + m_indexOff),
                         Cm{rounded6(off)});
    }
    void gradeMiddle()
    {
        const double opening = m_hers.opening.value();
        if (opening >= m_writer.limit(PolicyKey::BuildLeastOpening) - kBorderTolerance)
            return m_writer.right(BuildStep::MiddleFinger);
        FreeHand closed = m_wanted;
        closed.opening = m_hers.opening;
        m_writer.slip(BuildStep::MiddleFinger,
                      {{}, Slip::FingersClosed, {}, {}, {}, Degrees{rounded6(opening)}, 0.0, {}},
                      with(closed));
    }
    [[nodiscard]] bool isOnCrest() const
    {
        const auto crest = placeOf(m_writer.target(), Landmark::IliacCrest);
        return crest && distance(crest->nearest(m_pose.indexTip), m_pose.indexTip) <=
                            m_writer.limit(PolicyKey::BuildCrest);
    }

    StepWriter& m_writer;
    FreeHand m_hers, m_wanted;
    HandPose m_pose, m_wantedPose;
    Point m_palmOff, m_indexOff;
    bool m_indexRight = false;
    bool m_short = false;  // the palm lies as taught, yet too far from the spine or too near
};

void gradeMedians(StepWriter& writer)
{
    constexpr std::array kCorners{std::pair{Handle::CornerTrochanter, Slip::CornerTrochanterOff},
                                  std::pair{Handle::CornerTubercle, Slip::CornerTubercleOff},
                                  std::pair{Handle::CornerSpine, Slip::CornerSpineOff}};
    const double limit = writer.limit(PolicyKey::BuildPlace);
    auto worst = kCorners.front();
    double most = -1.0;
    for (const auto& corner : kCorners) {
        const double off =
            distance(*writer.hers().point(corner.first), *writer.flawless().point(corner.first));
        if (off > most) {
            most = off;
            worst = corner;
        }
    }
    if (most <= limit + kBorderTolerance) {
        writer.right(BuildStep::Corners);
    } else {
        // The feet go with the side they halve.
        Build alone =
            placedOnHip(writer.flawless(), writer.builder(), worst.first, *writer.hers().point(worst.first));
        for (const Handle foot : {Handle::FootTrochanter, Handle::FootTubercle, Handle::FootSpine}) {
            const MedianOf median = medianOf(foot);
            alone.point(foot) = lerp(*alone.point(median.sideFrom), *alone.point(median.sideTo), 0.5);
        }
        const Point wanted = *writer.flawless().point(worst.first);
        writer.slip(BuildStep::Corners,
                    writer.offPlace(worst.second, wanted, *writer.hers().point(worst.first)), alone);
    }
    double uneven = 0.0;
    Build alone = writer.flawless();
    for (const Handle foot : {Handle::FootTrochanter, Handle::FootTubercle, Handle::FootSpine}) {
        const double share = footShare(writer.hers(), foot);
        uneven = std::max(uneven, std::abs(share - 0.5));
        const MedianOf median = medianOf(foot);
        alone.point(foot) = lerp(*alone.point(median.sideFrom), *alone.point(median.sideTo), share);
    }
    if (uneven <= writer.limit(PolicyKey::BuildShare) + kBorderTolerance)
        return writer.right(BuildStep::Medians);
    writer.slip(BuildStep::Medians, {{}, Slip::MedianUneven, {}, {}, {}, {}, uneven, {}}, alone);
}

}  // namespace hip_grade_detail

using namespace hip_grade_detail;

void gradeHipBuild(StepWriter& writer)
{
    if (buildKindOf(writer.hers().convention) == BuildKind::TriangleAndMedians)
        return gradeMedians(writer);
    HandGrader(writer).gradeAll();
}

}  // namespace fb
