// Tiles in lines: as many beside each other as fit.
#pragma once

#include <QList>
#include <QWidget>

namespace tenter::desktop::start_page {

class TileGrid : public QWidget {
    Q_OBJECT

public:
    explicit TileGrid(QWidget* parent = nullptr);
    /// Replaces the tiles; the grid deletes the former ones.
    void setTiles(const QList<QWidget*>& tiles);
    /// Shows at most so many lines.
    void setMostLines(int lines) { mostLines_ = lines; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] int across(int width) const;
    [[nodiscard]] qsizetype shownCount(int width) const;
    void arrange();

    QList<QWidget*> tiles_;
    int mostLines_ = 1000;
};

}  // namespace tenter::desktop::start_page
