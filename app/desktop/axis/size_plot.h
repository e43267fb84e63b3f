// Font size against viewport width, a line for each role. The ends of ramps are handles.
#pragma once

#include <QMap>

#include "axis/handle.h"
#include "axis/place_mark.h"
#include "axis/plot.h"
#include "axis/ramp_ends.h"
#include "document/viewing.h"
#include "solve/allowed.h"

namespace tenter::desktop::axis {

class SizePlot : public Plot {
    Q_OBJECT

public:
    SizePlot(Viewing& viewing, const WidthScale& scale, QWidget* parent);
    /// Reads the sizes anew.
    void rebuild();
    /// Ends of ramps that follow the card are those of the band in view.
    void onWidth();
    /// Puts the handles where their ends are.
    void placeHandles();
    /// The size of each role at a width, with whether it is the role that is being worked on.
    struct Reading {
        QPointF at;
        QString text;
        bool chosen;
    };
    [[nodiscard]] std::vector<Reading> readings(double width) const;

signals:
    void handleGrabbed();
    void handleReleased();

protected:
    void restyle() override;
    void drawOver(QPainter& painter) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void readEnds();
    /// What wishes leave the chosen role, where a row is small enough to ask at every tick of a drag.
    void readAllowed();
    void readBefore();
    void drawAllowed(QPainter& painter, const row::Ink& ink) const;
    /// The size that is being pasted, as a curve; empty if there is none.
    [[nodiscard]] QVector<QPointF> previewed() const;
    /// Where wishes decide or conflict, in the variant in view.
    void placeMarks();
    void onMarks();
    Handle* addHandle(const QString& name);
    void moveTo(const QString& name, double width, double size);
    [[nodiscard]] QPen penOf(std::size_t index, const std::string& role, const row::Ink& ink) const;
    Viewing& viewing_;
    std::vector<SizeCurve> curves_;
    std::vector<SizeCurve> before_;  ///< as they are, while others are proposed
    std::vector<RampEnd> ends_;
    solve::Allowed allowed_;
    bool dragged_ = false;  ///< an end is
    QMap<QString, Handle*> handles_;
    std::vector<PlaceMark*> marks_;
    std::size_t band_ = 0;
};

}  // namespace tenter::desktop::axis
