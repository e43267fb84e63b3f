// A look to choose: a small picture of the row in it, and its name.
#pragma once

#include <QAbstractButton>
#include <QImage>

namespace tenter::desktop::new_row {

class LookTile : public QAbstractButton {
    Q_OBJECT

public:
    /// Size of the picture, px.
    static constexpr int imageWidth = 144;
    static constexpr int imageHeight = 96;

    LookTile(const QString& title, const QString& description, QWidget* parent = nullptr);
    void setImage(const QImage& image);
    [[nodiscard]] bool hasImage() const { return !image_.isNull(); }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QImage image_;
};

}  // namespace tenter::desktop::new_row
