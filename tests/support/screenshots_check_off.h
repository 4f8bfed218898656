// The pictures of a check-off with the sample, and of its records.
#pragma once

#include <QString>

namespace fb::screenshots {

void shootCheckOff(const QString& folder);
// Every stage dark, with large letters, on a large desk and right to left. Only when asked for.
void shootCheckOffLooks(const QString& folder);

}  // namespace fb::screenshots
