// Strong units. A number that crosses a header carries its unit in its type.
//
// Made by name (`Cm{3.0}`, `Cm::of(3.0)`), read by name (`.value()`): there is no
// implicit conversion to or from double. Arithmetic keeps the unit; the ratio of two
// lengths is a plain number.
#pragma once

#include <cmath>
#include <compare>
#include <numbers>

namespace fb {

template <class Tag>
class Quantity {
public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(double value) : m_value(value) {}

    [[nodiscard]] constexpr double value() const { return m_value; }
    [[nodiscard]] bool isFinite() const { return std::isfinite(m_value); }

    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity{a.m_value + b.m_value}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity{a.m_value - b.m_value}; }
    friend constexpr Quantity operator-(Quantity a) { return Quantity{-a.m_value}; }
    friend constexpr Quantity operator*(Quantity a, double k) { return Quantity{a.m_value * k}; }
    friend constexpr Quantity operator*(double k, Quantity a) { return a * k; }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.m_value / b.m_value; }
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the 0 of a defaulted <=> for a pointer
    friend constexpr auto operator<=>(Quantity, Quantity) = default;

private:
    double m_value = 0.0;
};

using Cm = Quantity<struct CmTag>;            // centimetres
using Mm = Quantity<struct MmTag>;            // millimetres (plate units, fat depths)
using Kg = Quantity<struct KgTag>;            // kilograms
using Ml = Quantity<struct MlTag>;            // millilitres
using Degrees = Quantity<struct DegreesTag>;  // degrees of arc

[[nodiscard]] constexpr double toRadians(Degrees degrees)
{
    return degrees.value() * std::numbers::pi / 180.0;
}
[[nodiscard]] constexpr Degrees fromRadians(double radians)
{
    return Degrees{radians * 180.0 / std::numbers::pi};
}

[[nodiscard]] constexpr Cm toCm(Mm mm) { return Cm{mm.value() / 10.0}; }
[[nodiscard]] constexpr Mm toMm(Cm cm) { return Mm{cm.value() * 10.0}; }

// The precision of everything that leaves core: 1e-6 cm, so that Debug and Release
// print the same bytes. Negative zero becomes zero.
[[nodiscard]] inline double rounded6(double value)
{
    const double r = std::round(value * 1e6) / 1e6;
    return r == 0.0 ? 0.0 : r;
}

}  // namespace fb
