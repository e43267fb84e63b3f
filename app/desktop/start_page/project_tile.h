// A button with a thumbnail of a row, a title and a description.
#pragma once

#include <QAbstractButton>
#include <QImage>

namespace tenter::desktop::start_page {

class ProjectTile : public QAbstractButton {
    Q_OBJECT

public:
    /// Size of the thumbnail, px.
    static constexpr int imageWidth = 264;
    static constexpr int imageHeight = 136;

    ProjectTile(const QString& title, const QString& description, QWidget* parent = nullptr);
    /// The thumbnail in device px; a null image if the project cannot be read.
    void setImage(const QImage& image);
    [[nodiscard]] bool hasImage() const { return !image_.isNull(); }
    /// Elides the start of the description instead of its end, as for folders.
    void setElidesStart(bool on) { elidesStart_ = on; }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QString description_;
    QImage image_;
    bool isMissing_ = false;
    bool elidesStart_ = false;
};

}  // namespace tenter::desktop::start_page
