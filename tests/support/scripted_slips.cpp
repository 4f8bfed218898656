// What can slip in each kind of build.
#include <array>

#include "tests/support/scripted_hand.h"

namespace fb::test {

namespace scripted_slips_detail {

constexpr std::array kEveryWay{Direction::High, Direction::Low, Direction::Forward, Direction::Back};
constexpr std::array kUpOrDown{Direction::High, Direction::Low};
constexpr std::array kToAndFro{Direction::Forward, Direction::Back};
constexpr std::array kNoWay{Direction::None};

class SlipList {
public:
    void add(Slip slip, std::optional<Handle> at, std::span<const Direction> ways)
    {
        for (const Direction way : ways)
            m_all.push_back({PlantedError::Kind::Slip, {}, {}, slip, at, {}, way});
    }
    void addCells()
    {
        for (const ThighRow row : {ThighRow::Upper, ThighRow::Middle, ThighRow::Lower}) {
            for (const ThighColumn column :
                 {ThighColumn::Inside, ThighColumn::Between, ThighColumn::Behind}) {
                const ThighCell cell{row, column};
                if (cell != ThighCell{ThighRow::Middle, ThighColumn::Between})
                    m_all.push_back({PlantedError::Kind::Slip, {}, {}, Slip::WrongCell, {}, cell, {}});
            }
        }
    }
    [[nodiscard]] std::vector<PlantedError> taken() { return std::move(m_all); }

private:
    std::vector<PlantedError> m_all;
};

}  // namespace scripted_slips_detail

std::vector<PlantedError> everySlip(const Target& target, const Builder&)
{
    using namespace scripted_slips_detail;
    using enum Handle;
    SlipList list;
    switch (buildKindOf(target.convention)) {
    case BuildKind::FingersAndTriangle:
        list.add(Slip::FingersOff, Fingers, kEveryWay);
        list.add(Slip::FingersTurned, {}, kNoWay);
        list.add(Slip::FingerCount, {}, kNoWay);
        list.add(Slip::BaseOff, BaseFront, kEveryWay);
        list.add(Slip::BaseOff, BaseBack, kEveryWay);
        list.add(Slip::ApexOff, Apex, kEveryWay);
        break;
    case BuildKind::HalvedLine:
        list.add(Slip::TopOff, LineTop, kEveryWay);
        list.add(Slip::BottomOff, LineBottom, kEveryWay);
        list.add(Slip::HalfUneven, LineMiddle, kUpOrDown);
        break;
    case BuildKind::ThighGrid:
        list.add(Slip::TopOff, ThighTop, kUpOrDown);
        list.add(Slip::BottomOff, ThighBottom, kUpOrDown);
        list.add(Slip::ThirdsUneven, UpperLine, kUpOrDown);
        list.add(Slip::ThirdsUneven, LowerLine, kUpOrDown);
        list.add(Slip::FrontLineOff, FrontLine, kToAndFro);
        list.add(Slip::OuterLineOff, OuterLine, kToAndFro);
        list.addCells();
        break;
    case BuildKind::HandOnHip:
        list.add(Slip::WrongHand, {}, kNoWay);
        list.add(Slip::PalmOff, Palm, kEveryWay);
        list.add(Slip::IndexOnCrest, IndexTip, kNoWay);
        list.add(Slip::IndexOff, IndexTip, kNoWay);
        list.add(Slip::FingersClosed, MiddleTip, kNoWay);
        break;
    case BuildKind::TriangleAndMedians:
        list.add(Slip::CornerTrochanterOff, CornerTrochanter, kEveryWay);
        list.add(Slip::CornerTubercleOff, CornerTubercle, kEveryWay);
        list.add(Slip::CornerSpineOff, CornerSpine, kEveryWay);
        for (const Handle foot : {FootTrochanter, FootTubercle, FootSpine})
            list.add(Slip::MedianUneven, foot, kNoWay);
        break;
    }
    return list.taken();
}

}  // namespace fb::test
