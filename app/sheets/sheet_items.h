// What a sheet asks for, item after item: a list in words, and beside it the fields of the chosen one.
#pragma once

#include <vector>

#include "app/sheets/sheet_part.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;

namespace fb {

class SheetItems : public SheetPart {
    Q_OBJECT

public:
    explicit SheetItems(QWidget* parent = nullptr);

    void fill(const Sheet& sheet) override;
    [[nodiscard]] Result<bool> writeTo(Sheet& sheet) const override;
    void say() override;

private:
    void layOut();
    [[nodiscard]] QWidget* fieldsOfOne();
    [[nodiscard]] int current() const;
    void showList(int current);
    void showOne();
    void fillViews();
    void takeOne();
    void add();
    void remove();
    void move(int by);
    void showButtons();

    std::vector<SheetItem> m_items;
    bool m_filling = false;

    QListWidget* m_list;
    QPushButton* m_add;
    QPushButton* m_remove;
    QPushButton* m_up;
    QPushButton* m_down;
    QLabel* m_siteName = nullptr;
    QComboBox* m_site = nullptr;
    QLabel* m_sideName = nullptr;
    QComboBox* m_side = nullptr;
    QLabel* m_viewName = nullptr;
    QComboBox* m_view = nullptr;
    QLabel* m_helpName = nullptr;
    QComboBox* m_help = nullptr;
    QCheckBox* m_byHand = nullptr;
    QWidget* m_one;  // holds these fields
};

}  // namespace fb
