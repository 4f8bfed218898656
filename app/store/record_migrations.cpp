#include "app/store/record_migrations.h"

namespace fb {

namespace record_migrations_detail {

// Lengths in centimetres, offsets as the grade has them, times in UTC as ISO 8601, words as core writes
// them, hashes SHA-256 in hex.
constexpr const char* kPeople[]{R"(
CREATE TABLE student (
  student_id VARCHAR(200) NOT NULL,
  family TEXT NOT NULL,
  given TEXT NOT NULL,
  section TEXT NOT NULL,
  extra_percent INTEGER NOT NULL,
  language VARCHAR(16) NOT NULL,
  invented INTEGER NOT NULL,
  saved_at VARCHAR(32) NOT NULL,
  CONSTRAINT student_key PRIMARY KEY (student_id),
  CONSTRAINT student_extra CHECK (extra_percent BETWEEN 0 AND 200),
  CONSTRAINT student_invented CHECK (invented IN (0, 1))
))",
                                R"(
CREATE TABLE assessor (
  assessor_id INTEGER NOT NULL,
  name TEXT NOT NULL,
  pin_hash VARCHAR(128) NOT NULL,
  wrong_in_a_row INTEGER NOT NULL,
  wait_until VARCHAR(32),
  enrolled_at VARCHAR(32) NOT NULL,
  CONSTRAINT assessor_key PRIMARY KEY (assessor_id)
))",
                                R"(
CREATE TABLE sheet (
  sheet_key VARCHAR(64) NOT NULL,
  title TEXT NOT NULL,
  sheet_text TEXT NOT NULL,
  used_order INTEGER NOT NULL,
  saved_at VARCHAR(32) NOT NULL,
  CONSTRAINT sheet_key PRIMARY KEY (sheet_key)
))",
                                R"(
CREATE TABLE policy_text (
  policy_hash VARCHAR(64) NOT NULL,
  policy_text TEXT NOT NULL,
  CONSTRAINT policy_text_key PRIMARY KEY (policy_hash)
))"};

// closed_on is the day of the lab's own calendar: what the days between attempts are counted from.
constexpr const char* kCheckOff[]{R"(
CREATE TABLE check_off (
  check_off_id INTEGER NOT NULL,
  student_id VARCHAR(200) NOT NULL,
  sheet_key VARCHAR(64) NOT NULL,
  attempt INTEGER NOT NULL,
  seed BIGINT NOT NULL,
  extra_percent INTEGER NOT NULL,
  policy_hash VARCHAR(64) NOT NULL,
  plate_hashes TEXT NOT NULL,
  program_version VARCHAR(64) NOT NULL,
  pixels_per_mm DOUBLE PRECISION NOT NULL,
  needs_second INTEGER NOT NULL,
  begun_at VARCHAR(32) NOT NULL,
  on_screen_ms BIGINT NOT NULL,
  on_manikin_ms BIGINT NOT NULL,
  closed_at VARCHAR(32),
  closed_on VARCHAR(10),
  outcome VARCHAR(24),
  percent DOUBLE PRECISION,
  rating INTEGER,
  remark TEXT,
  first_assessor_id INTEGER,
  second_assessor_id INTEGER,
  chain_length BIGINT,
  chain_head VARCHAR(64),
  CONSTRAINT check_off_key PRIMARY KEY (check_off_id),
  CONSTRAINT check_off_student FOREIGN KEY (student_id) REFERENCES student (student_id),
  CONSTRAINT check_off_sheet FOREIGN KEY (sheet_key) REFERENCES sheet (sheet_key),
  CONSTRAINT check_off_policy FOREIGN KEY (policy_hash) REFERENCES policy_text (policy_hash),
  CONSTRAINT check_off_first FOREIGN KEY (first_assessor_id) REFERENCES assessor (assessor_id),
  CONSTRAINT check_off_second FOREIGN KEY (second_assessor_id) REFERENCES assessor (assessor_id),
  CONSTRAINT check_off_assessors CHECK (first_assessor_id <> second_assessor_id),
  CONSTRAINT check_off_attempt CHECK (attempt >= 1),
  CONSTRAINT check_off_rating CHECK (rating BETWEEN 0 AND 5),
  CONSTRAINT check_off_closed CHECK ((closed_at IS NULL AND closed_on IS NULL AND outcome IS NULL
    AND first_assessor_id IS NULL AND chain_head IS NULL) OR (closed_at IS NOT NULL AND closed_on IS NOT NULL
    AND outcome IS NOT NULL AND first_assessor_id IS NOT NULL AND chain_head IS NOT NULL
    AND chain_length IS NOT NULL AND percent IS NOT NULL AND rating IS NOT NULL))
))",
                                  // One at a time.
                                  "CREATE UNIQUE INDEX check_off_open ON check_off ((closed_at IS NULL)) "
                                  "WHERE closed_at IS NULL",
                                  // Holds all that a board asks.
                                  "CREATE INDEX check_off_board ON check_off (sheet_key, student_id, "
                                  "check_off_id, closed_on, outcome, percent, closed_at)",
                                  "CREATE INDEX check_off_of_student ON check_off (student_id)",
                                  R"(
CREATE TABLE check_off_event (
  check_off_id INTEGER NOT NULL,
  seq INTEGER NOT NULL,
  kind VARCHAR(24) NOT NULL,
  at VARCHAR(32) NOT NULL,
  event_text TEXT NOT NULL,
  CONSTRAINT check_off_event_key PRIMARY KEY (check_off_id, seq),
  CONSTRAINT check_off_event_check_off FOREIGN KEY (check_off_id) REFERENCES check_off (check_off_id)
))",
                                  R"(
CREATE TABLE observation (
  check_off_id INTEGER NOT NULL,
  step VARCHAR(32) NOT NULL,
  seen VARCHAR(16) NOT NULL,
  at_s DOUBLE PRECISION NOT NULL,
  remark TEXT NOT NULL,
  CONSTRAINT observation_key PRIMARY KEY (check_off_id, step),
  CONSTRAINT observation_check_off FOREIGN KEY (check_off_id) REFERENCES check_off (check_off_id)
))",
                                  R"(
CREATE TABLE remediation (
  check_off_id INTEGER NOT NULL,
  what TEXT NOT NULL,
  assessor_id INTEGER NOT NULL,
  signed_at VARCHAR(32) NOT NULL,
  CONSTRAINT remediation_key PRIMARY KEY (check_off_id),
  CONSTRAINT remediation_check_off FOREIGN KEY (check_off_id) REFERENCES check_off (check_off_id),
  CONSTRAINT remediation_assessor FOREIGN KEY (assessor_id) REFERENCES assessor (assessor_id)
))"};

// Flags and builds of an item by hand, and the whole of the answer, stand in the text of its event. Where one
// patient lies off the mean body is told in residual standard deviations (_sd).
constexpr const char* kAnswer[]{R"(
CREATE TABLE answer (
  check_off_id INTEGER NOT NULL,
  item INTEGER NOT NULL,
  event_seq INTEGER NOT NULL,
  answered_at VARCHAR(32) NOT NULL,
  site VARCHAR(24) NOT NULL,
  side VARCHAR(8) NOT NULL,
  body_view VARCHAR(32) NOT NULL,
  convention VARCHAR(32) NOT NULL,
  by_hand INTEGER NOT NULL,
  patient_sex VARCHAR(8) NOT NULL,
  skin_tone INTEGER NOT NULL,
  finding VARCHAR(32),
  finding_part VARCHAR(16),
  finding_side VARCHAR(8),
  time_up INTEGER NOT NULL,
  refusal VARCHAR(32),
  direction VARCHAR(16) NOT NULL,
  verdict VARCHAR(16) NOT NULL,
  hazard VARCHAR(32),
  patient_age_years DOUBLE PRECISION NOT NULL,
  patient_stature_cm DOUBLE PRECISION NOT NULL,
  patient_weight_kg DOUBLE PRECISION NOT NULL,
  patient_arm_length_sd DOUBLE PRECISION NOT NULL,
  patient_axilla_gap_sd DOUBLE PRECISION NOT NULL,
  patient_arm_girth_sd DOUBLE PRECISION NOT NULL,
  patient_crest_gap_sd DOUBLE PRECISION NOT NULL,
  patient_thigh_length_sd DOUBLE PRECISION NOT NULL,
  patient_thigh_girth_sd DOUBLE PRECISION NOT NULL,
  mark_x_cm DOUBLE PRECISION,
  mark_y_cm DOUBLE PRECISION,
  distance_to_ideal_cm DOUBLE PRECISION NOT NULL,
  off_distal_cm DOUBLE PRECISION NOT NULL,
  off_anterior_cm DOUBLE PRECISION NOT NULL,
  points DOUBLE PRECISION NOT NULL,
  CONSTRAINT answer_key PRIMARY KEY (check_off_id, item),
  CONSTRAINT answer_event FOREIGN KEY (check_off_id, event_seq) REFERENCES check_off_event (check_off_id, seq),
  CONSTRAINT answer_points CHECK (points BETWEEN 0 AND 1),
  CONSTRAINT answer_mark CHECK ((mark_x_cm IS NULL) = (mark_y_cm IS NULL))
))"};

constexpr const char* kAudit[]{R"(
CREATE TABLE audit (
  seq BIGINT NOT NULL,
  at VARCHAR(32) NOT NULL,
  actor VARCHAR(64) NOT NULL,
  event VARCHAR(32) NOT NULL,
  object TEXT NOT NULL,
  detail TEXT NOT NULL,
  hash VARCHAR(64) NOT NULL,
  CONSTRAINT audit_key PRIMARY KEY (seq)
))"};

constexpr const char* kKept[]{"audit", "check_off_event", "answer", "remediation", "policy_text"};

QString refusal(const QString& name, const QString& when)
{
    return QStringLiteral("CREATE TRIGGER %1 BEFORE %2 BEGIN SELECT RAISE(ABORT, 'this is only ever added "
                          "to'); END")
        .arg(name, when);
}

std::vector<QString> refusals()
{
    std::vector<QString> all;
    for (const char* table : kKept) {
        const QString name = QString::fromLatin1(table);
        all.push_back(refusal(name + QStringLiteral("_stays"), QStringLiteral("UPDATE ON ") + name));
        all.push_back(refusal(name + QStringLiteral("_is_kept"), QStringLiteral("DELETE ON ") + name));
    }
    all.push_back(refusal(QStringLiteral("check_off_is_kept"), QStringLiteral("DELETE ON check_off")));
    all.push_back(refusal(QStringLiteral("check_off_signed_stays"),
                          QStringLiteral("UPDATE ON check_off WHEN OLD.closed_at IS NOT NULL")));
    return all;
}

}  // namespace record_migrations_detail

std::span<const Migration> recordMigrations()
{
    using namespace record_migrations_detail;
    static const std::vector<Migration> kAll = [] {
        Migration first;
        const auto add = [&](const auto& tables) {
            for (const char* sql : tables)
                first.statements.push_back(QString::fromLatin1(sql));
        };
        add(kPeople);
        add(kCheckOff);
        add(kAnswer);
        add(kAudit);
        first.forSqlite = refusals();
        return std::vector<Migration>{first};
    }();
    return kAll;
}

StoreKind recordStoreKind()
{
    return {.steps = recordMigrations(), .applicationId = kRecordsApplication, .alone = true};
}

}  // namespace fb
