// What stands behind the picture of a demonstration: reads the presenter's state once for all that changed at
// a time, asks for the drawings it needs, and keeps a body that is shown until the next one is drawn. No
// widget: it says when to repaint.
#pragma once

#include <QObject>
#include <QRegion>
#include <QTimer>
#include <array>
#include <atomic>
#include <memory>
#include <optional>

#include "app/demonstrate/lecture_painter_page.h"
#include "app/demonstrate/pane_ink.h"

class QPainter;

namespace fb {

class LecturePresenter;

class LectureStage : public QObject {
    Q_OBJECT

public:
    // The presenter outlives it.
    explicit LectureStage(LecturePresenter& presenter);
    ~LectureStage() override;

    void setSize(QSizeF size, double devicePixelRatio);
    void setScheme(const Scheme& scheme);
    void setDirection(Qt::LayoutDirection direction);
    // While it is not, nothing is drawn and no drawing is kept.
    void setShown(bool shown);
    void readAgain();  // the language is another

    [[nodiscard]] const Scheme& scheme() const { return m_scheme; }
    // What the state asks for, without pictures.
    [[nodiscard]] const LectureFace& wanted();
    // As it is painted now: the newest that is drawn.
    [[nodiscard]] LectureFace face();
    [[nodiscard]] bool isSharp();
    // Of the first pane, cm; nullopt: beside it, or there is none.
    [[nodiscard]] std::optional<QPointF> placeAt(QPointF widget);
    [[nodiscard]] QRectF seen();    // cm, low corner first; empty: no pane
    void paint(QPainter& painter);  // as far as its clip reaches

Q_SIGNALS:
    void changed(const QRegion& where);  // repaint that; pixels
    void wasRead();                      // wanted() is another, and more of it than the pointer
    void sharpened();

private:
    void follow();
    [[nodiscard]] bool isOnlyMoving() const;
    void readLater();
    void readPointer();
    void read();
    void repaint(const QRegion& where);
    void repaintAll();
    void renewSheet();
    [[nodiscard]] const LecturePage& page();
    [[nodiscard]] std::optional<ViewFrame> frame();
    void ask();
    void take(std::size_t pane, const PaneDrawn& drawn);
    void warm();  // the words of every step of what is shown
    [[nodiscard]] PaneJob jobOf(std::size_t pane) const;

    LecturePresenter& m_presenter;
    QSizeF m_size;
    double m_pixelRatio = 1.0;
    Scheme m_scheme;
    Qt::LayoutDirection m_direction = Qt::LeftToRight;
    bool m_isShown = false;
    bool m_isStale = true;

    LectureFace m_wanted;
    LectureState m_read;  // as it was then
    // The picture as it was painted last, to be shown again without being painted; none while it is not
    // shown.
    QImage m_sheet;
    QRegion m_stale;                    // of it
    std::optional<LecturePage> m_page;  // of face(), but for what is pointed at; none: not composed yet
    std::array<std::optional<PaneJob>, 2> m_asked;
    std::array<std::optional<PaneDrawn>, 2> m_drawn;
    QTimer m_soon;
    // What words are ready of.
    struct Warmed {
        Convention convention{};
        View view{};
        Side side{};
        QSizeF size;
        double pixelRatio = 1.0;
        Scheme scheme;
        Qt::LayoutDirection direction{};

        friend bool operator==(const Warmed&, const Warmed&) = default;
    };
    std::optional<Warmed> m_warmed;
    std::shared_ptr<std::atomic_bool> m_warming;  // true: it is of no use any more
    std::array<PaneInk, 2> m_ink;
};

}  // namespace fb
