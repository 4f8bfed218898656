// What anybody would try first, of six characters and more: refused as a PIN. One character repeated and runs
// up or down are refused by rule and stand in no list.
//
// Source: the hundred most used of ten million leaked passwords (M. Burnett, 2015, as SecLists publishes
// them), without names and without what no school would print; the last row is the lab's choice.
#pragma once

#include <QStringView>
#include <array>

namespace fb {

// Lower case, ten at least (NIST SP 800-63B-4, activation secrets).
inline constexpr std::array<QStringView, 40> kCommonPins{
    u"123123",   u"696969",     u"123321",   u"121212",   u"112233",   u"131313",  u"159753",  u"password",
    u"qwerty",   u"dragon",     u"baseball", u"abc123",   u"football", u"monkey",  u"letmein", u"shadow",
    u"master",   u"qwertyuiop", u"mustang",  u"superman", u"1qaz2wsx", u"qazwsx",  u"123qwe",  u"killer",
    u"trustno1", u"zxcvbnm",    u"asdfgh",   u"zxcvbn",   u"hunter",   u"soccer",  u"batman",  u"sunshine",
    u"iloveyou", u"starwars",   u"computer", u"freedom",  u"princess", u"nursing", u"teacher", u"assessor"};

}  // namespace fb
