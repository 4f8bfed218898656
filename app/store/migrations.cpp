#include "app/store/migrations.h"

namespace fb {

namespace migrations_detail {

// Lengths in centimetres, times in UTC as ISO 8601, words as core/basics/enums.h writes them.
const char* const kProfile = R"(
CREATE TABLE profile (
  profile_id INTEGER NOT NULL,
  hand_length_cm DOUBLE PRECISION,
  finger_width_cm DOUBLE PRECISION,
  writing_hand VARCHAR(8) NOT NULL,
  sex VARCHAR(8),
  stature_cm DOUBLE PRECISION,
  updated_at VARCHAR(32) NOT NULL,
  CONSTRAINT profile_key PRIMARY KEY (profile_id),
  CONSTRAINT profile_lengths CHECK (hand_length_cm > 0 AND finger_width_cm > 0 AND stature_cm > 0),
  CONSTRAINT profile_writing_hand CHECK (writing_hand IN ('left', 'right'))
))";

const char* const kScreen = R"(
CREATE TABLE screen (
  screen_key VARCHAR(512) NOT NULL,
  pixels_per_mm DOUBLE PRECISION NOT NULL,
  updated_at VARCHAR(32) NOT NULL,
  CONSTRAINT screen_key PRIMARY KEY (screen_key),
  CONSTRAINT screen_pixels CHECK (pixels_per_mm > 0)
))";

}  // namespace migrations_detail

std::span<const Migration> migrations()
{
    using namespace migrations_detail;
    static const std::vector<Migration> kAll{
        {.statements = {QString::fromLatin1(kProfile), QString::fromLatin1(kScreen)}},
    };
    return kAll;
}

}  // namespace fb
