// The Words panel: the copy of the selected card, part by part.
#pragma once

#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

#include "panels/card_bar.h"
#include "panels/copy_edit.h"
#include "panels/panel.h"
#include "panels/trial_box.h"

namespace tenter::desktop::panels {

class WordsPanel : public Panel {
    Q_OBJECT

public:
    explicit WordsPanel(Context& context, QWidget* parent = nullptr);
    void refresh() override;
    void refreshPixels() override {}

protected:
    void showEvent(QShowEvent* event) override;

public:
    [[nodiscard]] bool takesScope() const override { return false; }

signals:
    void pagesRowWanted();   ///< the page's row is to be taken in again
    void ownMarkupWanted();  ///< the row is to have our own markup again

private:
    struct Line;
    QWidget* buildGiven();
    /// The parts as they are built: a text part's role, `picture` for pictures.
    [[nodiscard]] std::vector<std::string> shape() const;
    void rebuild();
    /// Tells below each text how much longer it may get.
    void tellRoom();
    Line* buildLine(std::size_t part);
    void editPart(std::size_t part, const QString& name,
                  const std::function<void(project::TextPart&)>& change);
    void addPart(const std::string& role);
    void removePart(std::size_t part);
    void movePart(std::size_t part, int by);

    CardBar* bar_;
    QLabel* givenSays_ = nullptr;
    QWidget* given_;  ///< tells that the row is a page's own; holds `givenSays_`
    QWidget* holder_;
    QVBoxLayout* lines_;
    QPushButton* add_;
    TrialBox* trial_;
    QTimer rest_;  ///< before room for copy is told anew
    int card_ = -1;
    bool builtGiven_ = false;
    std::vector<std::string> builtShape_;
    std::vector<Line*> built_;
};

}  // namespace tenter::desktop::panels
