// A plot of what the sweep knows of cards or pictures: how tall cards are, how large a picture's slot is.
#pragma once

#include "axis/plot.h"
#include "document/survey.h"

namespace tenter::desktop::axis {

class SweepPlot : public Plot {
    Q_OBJECT

public:
    enum class Shows { CardHeight, PictureSlot };
    SweepPlot(Shows shows, Viewing& viewing, const Survey& survey, const WidthScale& scale, QWidget* parent);
    /// Reads the curves anew.
    void rebuild();

protected:
    void restyle() override;

private:
    struct Read {
        std::size_t card = 0;
        bool height = false;  ///< of a picture's slot; else its width
        QVector<QPointF> points;
    };
    void readCards();
    void readPictures();
    [[nodiscard]] bool isSelected(std::size_t card) const;

    Shows shows_;
    Viewing& viewing_;
    const Survey& survey_;
    std::vector<Read> read_;
};

}  // namespace tenter::desktop::axis
