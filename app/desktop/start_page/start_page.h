// The start page, shown before a project is open: new row, open, import, recent projects, samples.
#pragma once

#include <QLabel>
#include <QPointer>
#include <QWidget>
#include <map>
#include <vector>

#include "document/samples.h"
#include "start_page/project_tile.h"
#include "start_page/thumbnails.h"
#include "start_page/tile_grid.h"

namespace tenter::desktop::start_page {

class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(QWidget* parent = nullptr);
    void setSamples(const std::vector<Sample>& samples);
    void setRecent(const QStringList& files);
    /// Shows that files can be dropped here.
    void setDropping(bool on);

Q_SIGNALS:
    void newRowRequested();
    void openRequested();
    void importRequested();
    void sampleRequested(const QString& file);
    void fileRequested(const QString& file);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QWidget* buildHead(QWidget* parent);
    void request(const QString& file, ProjectTile* tile);

    Thumbnails thumbnails_{this};
    std::multimap<QString, QPointer<ProjectTile>> waiting_;  ///< tiles by project file
    QLabel* dropHint_ = nullptr;
    TileGrid* recent_;
    TileGrid* samples_;
    QLabel *noRecent_, *noSamples_;
    bool isDropping_ = false;
};

}  // namespace tenter::desktop::start_page
