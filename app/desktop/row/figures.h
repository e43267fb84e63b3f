// The figures shown when the pointer is over a part: font size, line height, measure, lines, slack, box.
#pragma once

#include <QPair>
#include <QString>
#include <QWidget>

#include "session/layout_cache.h"

namespace tenter::desktop::row {

struct Figures {
    QString title;                        ///< `Heading, card 2`
    QList<QPair<QString, QString>> rows;  ///< name and value
    QString note;                         ///< shown below the rows; may be empty
    /// All figures in one sentence, for screen readers.
    [[nodiscard]] QString asSentence() const;
};

/// The figures of the part with index `part` in the layout of a variant.
Figures figuresOf(const LayoutCache& layouts, std::size_t variant, std::size_t part);

/// A small box beside a part that shows its figures.
class FigureBox : public QWidget {
    Q_OBJECT

public:
    explicit FigureBox(QWidget* parent);
    /// Shows `figures` beside the rectangle `part` (px of the parent widget), on a side with enough room.
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
