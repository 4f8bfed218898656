// Keeps a sweep from babbling: words are said when they change and then no oftener than kRestMs,
// the newest last.
#pragma once

#include <QObject>
#include <QString>
#include <QTimer>

namespace fb {

class PlateVoice : public QObject {
    Q_OBJECT

public:
    static constexpr int kRestMs = 350;

    explicit PlateVoice(QObject* parent = nullptr);

    void hear(const QString& words);  // empty: there is nothing more to say
    void forget();                    // the same words would be news again

Q_SIGNALS:
    void said(const QString& words);

private:
    void sayNewest();

    QString m_newest;
    QString m_said;
    QTimer m_rest;
};

}  // namespace fb
