// The areas of the program as words in the header; one of them is open.
#pragma once

#include <QWidget>
#include <array>

class QToolButton;

namespace fb {

enum class Area { Practice, CheckOff, Demonstrate, Records };
inline constexpr std::array kAreas{Area::Practice, Area::CheckOff, Area::Demonstrate, Area::Records};

class AreaBar : public QWidget {
    Q_OBJECT

public:
    explicit AreaBar(QWidget* parent = nullptr);

    void showArea(Area area);
    // Whether another area than the open one can be asked for.
    void setFree(bool free);

Q_SIGNALS:
    void areaAsked(fb::Area area);

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void say();
    void fit();

    std::array<QToolButton*, kAreas.size()> m_buttons{};
    Area m_shown = Area::Practice;
    bool m_free = true;
};

}  // namespace fb
