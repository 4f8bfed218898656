// A smooth, strictly rising curve through given knots, with an exact inverse.
//
// Piecewise cubic Hermite with Fritsch-Carlson slopes (PCHIP; Fritsch and Butland 1984),
// end slopes equal to the last secant, every slope held to at least 0.3 of the smaller
// neighbouring secant so that nothing is flattened away. Beyond the last knots it goes on
// straight.
//
// Laws: rising knots give a rising curve; inverse(at(x)) == x to 1e-9 cm; knots equal on
// both sides give the identity.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>

namespace fb {

class MonotoneCurve {
public:
    static constexpr std::size_t kMaxKnots = 8;

    // nullopt unless 2 to kMaxKnots knots rise strictly in both coordinates.
    [[nodiscard]] static std::optional<MonotoneCurve> make(std::span<const double> x,
                                                           std::span<const double> y);

    [[nodiscard]] double at(double x) const;
    [[nodiscard]] double slopeAt(double x) const;  // always positive
    [[nodiscard]] double inverse(double y) const;

private:
    MonotoneCurve() = default;
    void setSlopes();
    [[nodiscard]] std::size_t pieceOfX(double x) const;
    [[nodiscard]] std::size_t pieceOfY(double y) const;

    std::size_t m_count = 0;
    std::array<double, kMaxKnots> m_x{};
    std::array<double, kMaxKnots> m_y{};
    std::array<double, kMaxKnots> m_slope{};
};

}  // namespace fb
