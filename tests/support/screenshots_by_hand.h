// The pictures of a site that is found by hand.
#pragma once

#include <QString>

namespace fb::screenshots {

void shootByHand(const QString& folder);
// The hip alone: dark, large letters, a large desk, right to left. Only when asked for.
void shootByHandLooks(const QString& folder);

}  // namespace fb::screenshots
