// Margin and padding as a technical drawing: dimension lines in the text's colour, padding hatched, margin
// open, a number field on every side.
#pragma once

#include <array>

#include "controls/number_editors.h"
#include "panels/binding.h"

namespace tenter::desktop::panels {

class DimensionDrawing : public QWidget {
    Q_OBJECT

public:
    /// `subject` as for Binding. Rows and cards have no margin here, pictures no padding.
    DimensionDrawing(Context& context, const std::string& subject, QWidget* parent = nullptr);
    void refresh();
    void refreshPixels();
    [[nodiscard]] QSize sizeHint() const override;
    /// Fields that can be given the focus.
    [[nodiscard]] QWidget* marginField() const { return fields_[0].editor; }
    [[nodiscard]] QWidget* paddingField() const { return fields_[4].editor; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    struct Field {
        controls::NumberEditor* editor = nullptr;
        Binding* binding = nullptr;
    };
    struct Boxes {
        QRect margin, border, content;
    };
    [[nodiscard]] std::string subject() const;
    [[nodiscard]] bool hasMargin() const;
    [[nodiscard]] bool hasPadding() const;
    [[nodiscard]] Boxes boxes() const;
    /// The length in a field in CSS px at this viewport width.
    [[nodiscard]] std::optional<double> computed(int field) const;
    void place();
    void drawDimension(QPainter& painter, const QRect& outer, const QRect& inner, int side, int field) const;

    Context& context_;
    std::string subject_;
    std::array<Field, 8> fields_;  // margin top, right, bottom, left; padding the same
};

}  // namespace tenter::desktop::panels
