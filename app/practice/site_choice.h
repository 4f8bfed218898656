// Which sites a run asks, each with the convention it is graded by, and whether charts may rule
// a site out.
#pragma once

#include <QWidget>
#include <array>

#include "app/doors/settings.h"
#include "core/policy/policy.h"

class QCheckBox;
class QComboBox;
class QLabel;

namespace fb {

class SiteChoice : public QWidget {
    Q_OBJECT

public:
    explicit SiteChoice(QWidget* parent = nullptr);

    // The policy's own convention stands where nothing else was chosen.
    void fill(const RequestMix& mix, const Policy& policy, const OwnChoices& own);
    [[nodiscard]] RequestMix mix() const;
    [[nodiscard]] OwnChoices conventions() const;  // one for every site, without a hand

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Row {
        Site site{};
        QCheckBox* asked = nullptr;
        QComboBox* convention = nullptr;
    };
    void say();

    QLabel* m_title;
    std::array<Row, kSites.size()> m_rows;
    QCheckBox* m_findings;
};

}  // namespace fb
