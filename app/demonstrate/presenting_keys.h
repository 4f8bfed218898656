// The keys of a presenter, the same wherever a demonstration is shown: Page Down, Right, Down, Space next;
// Page Up, Left, Up, Backspace back; Home, End; B or period blank.
#pragma once

namespace fb {

class LecturePresenter;

[[nodiscard]] bool isPresentingKey(int key);
// Does what the key is for; false: it is none of them.
bool presentBy(LecturePresenter& presenter, int key);

}  // namespace fb
