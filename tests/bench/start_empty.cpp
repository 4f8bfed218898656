// An empty main window of the program's own size: the floor every start is measured against.
#include <QApplication>
#include <QMainWindow>
#include <QTimer>

#include "tests/bench/start_clock.h"

namespace fb::bench {

class EmptyWindow : public QMainWindow {
protected:
    void paintEvent(QPaintEvent* event) override
    {
        QMainWindow::paintEvent(event);
        if (m_told)
            return;
        m_told = true;
        tellTime("first");
        QTimer::singleShot(0, this, &QWidget::close);
    }

private:
    bool m_told = false;
};

}  // namespace fb::bench

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    fb::bench::EmptyWindow window;
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
