// The figures of a part: its size, line height, measure, slack, box.
#pragma once

#include <QPair>
#include <QString>
#include <QWidget>

#include "document/viewing.h"

namespace tenter::desktop::row {

struct Figures {
    QString title;  ///< `heading, card 2`
    QList<QPair<QString, QString>> rows;
    QString note;  ///< under them; may be empty
    /// One sentence, for assistive technology.
    [[nodiscard]] QString spoken() const;
};

/// Figures of part `part` of the layout that is shown.
Figures figuresOf(const Viewing& viewing, std::size_t part);

/// A small box that shows figures beside a part.
class FigureBox : public QWidget {
    Q_OBJECT

public:
    explicit FigureBox(QWidget* parent);
    /// Shows `figures` beside `part` (parent's coordinates), where there is room.
    void showBeside(const QRect& part, const Figures& figures);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int nameWidth() const;
    [[nodiscard]] int innerWidth() const;
    [[nodiscard]] int noteHeight(int width) const;
    Figures figures_;
};

}  // namespace tenter::desktop::row
