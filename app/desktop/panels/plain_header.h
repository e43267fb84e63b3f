// Column titles of a table in a panel.
#pragma once

#include <QHeaderView>

namespace tenter::desktop::panels {

/// Titles in the secondary colour above a hairline. The first column starts at the left, the others end at
/// the right.
class PlainHeader : public QHeaderView {
    Q_OBJECT

public:
    static constexpr int height = 24;  ///< px

    /// `margin`: left and right of a title, px.
    explicit PlainHeader(int margin, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override { return {QHeaderView::sizeHint().width(), height}; }

protected:
    void paintSection(QPainter* painter, const QRect& rect, int column) const override;

private:
    int margin_;
};

}  // namespace tenter::desktop::panels
