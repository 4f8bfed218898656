#include "app/demonstrate/presenting_keys.h"

#include <Qt>
#include <optional>

#include "app/lecture/lecture_presenter.h"

namespace fb {

namespace presenting_keys_detail {

enum class Deed { Next, Back, First, Last, Blank };

std::optional<Deed> deedOf(int key)
{
    switch (key) {
    case Qt::Key_PageDown:
    case Qt::Key_Right:
    case Qt::Key_Down:
    case Qt::Key_Space: return Deed::Next;
    case Qt::Key_PageUp:
    case Qt::Key_Left:
    case Qt::Key_Up:
    case Qt::Key_Backspace: return Deed::Back;
    case Qt::Key_Home: return Deed::First;
    case Qt::Key_End: return Deed::Last;
    case Qt::Key_B:
    case Qt::Key_Period: return Deed::Blank;
    default: return std::nullopt;
    }
}

}  // namespace presenting_keys_detail

bool isPresentingKey(int key) { return presenting_keys_detail::deedOf(key).has_value(); }

bool presentBy(LecturePresenter& presenter, int key)
{
    using presenting_keys_detail::Deed;
    const auto deed = presenting_keys_detail::deedOf(key);
    if (!deed)
        return false;
    switch (*deed) {
    case Deed::Next: presenter.next(); break;
    case Deed::Back: presenter.back(); break;
    case Deed::First: presenter.goTo(0); break;
    case Deed::Last: presenter.goTo(static_cast<int>(presenter.state().steps.size()) - 1); break;
    case Deed::Blank: presenter.setBlank(!presenter.state().blank); break;
    }
    return true;
}

}  // namespace fb
