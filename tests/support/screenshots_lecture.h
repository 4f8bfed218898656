// The README's pictures of a demonstration: the speaker's page and what the room sees.
#pragma once

#include <QString>

namespace fb::screenshots {

void shootLecture(const QString& folder);
// The same in dark, Spanish, mirrored, with large letters and on a small and a large projector.
void shootLectureLooks(const QString& folder);

}  // namespace fb::screenshots
