// The plot “Font size”: a line for each role over the viewport width, with handles at the ends of ramps.
#pragma once

#include <QMap>

#include "axis/handle.h"
#include "axis/plot.h"
#include "axis/ramp_ends.h"
#include "axis/wish_mark.h"
#include "session/session.h"
#include "solve/allowed.h"

namespace tenter::desktop::axis {

class SizePlot : public Plot {
    Q_OBJECT

public:
    SizePlot(Session& session, const WidthScale& scale, QWidget* parent);
    /// Computes the curves again.
    void rebuild();
    /// Updates the handles of ramps that follow the card's width: they show the band of the current width.
    void onWidth();
    /// Moves the handles to the ends of the ramps.
    void placeHandles();
    /// The font size of a role at one width.
    struct SizeAtWidth {
        QPointF at;    ///< px of the widget
        QString text;  ///< the size in CSS px, without unit
        bool chosen;   ///< true for the role that is being edited
    };
    /// One for each role, at viewport width `width` (CSS px).
    [[nodiscard]] std::vector<SizeAtWidth> sizesAt(double width) const;

Q_SIGNALS:
    void handleGrabbed();
    void handleReleased();

protected:
    void restyle() override;
    void drawOver(QPainter& painter) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void readEnds();
    /// Computes which sizes of the chosen role satisfy every wish. Only for rows small enough to do so in one
    /// frame.
    void readAllowed();
    void readBefore();
    void drawAllowed(QPainter& painter, const row::Ink& ink) const;
    /// The pasted size that is not applied yet, as a curve; empty if there is none.
    [[nodiscard]] QVector<QPointF> previewed() const;
    /// Shows a mark wherever a wish of the current variant limits a size or cannot be satisfied.
    void placeMarks();
    void onMarks();
    Handle* addHandle(const QString& name);
    void moveTo(const QString& name, double width, double size);
    [[nodiscard]] QPen penOf(std::size_t index, const std::string& role, const row::Ink& ink) const;
    Session& session_;
    std::vector<SizeCurve> curves_;
    std::vector<SizeCurve> before_;  ///< the sizes in the document, while a proposal is shown
    std::vector<RampEnd> ends_;
    solve::Allowed allowed_;
    bool dragged_ = false;      ///< an end of a ramp is being dragged
    project::Project grabbed_;  ///< the project before that
    QMap<QString, Handle*> handles_;
    std::vector<WishMark*> marks_;
    std::size_t band_ = 0;
};

}  // namespace tenter::desktop::axis
