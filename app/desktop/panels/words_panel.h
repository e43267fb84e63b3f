// The Words panel: the texts of the selected card, part by part, and the text tests.
#pragma once

#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

#include "controls/copy_edit.h"
#include "panels/card_bar.h"
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
    [[nodiscard]] QWidget* head() const override { return bar_; }

Q_SIGNALS:
    void importRowRequested();
    void ownMarkupRequested();  ///< the imported markup must be replaced by Tenter’s

private:
    struct Line;
    QWidget* buildGiven();
    /// The role of each part of the card; `picture` for pictures.
    [[nodiscard]] std::vector<std::string> shape() const;
    void rebuild();
    /// Shows below each text how many more characters fit.
    void showRoom();
    Line* buildLine(std::size_t part);
    /// The mark in the row goes to the part whose text is edited.
    void selectPart(std::size_t part);
    void editPart(std::size_t part, const QString& name,
                  const std::function<void(project::TextPart&)>& change);
    void addPart(const std::string& role);
    void removePart(std::size_t part);
    void movePart(std::size_t part, int by);

    CardBar* bar_;
    QLabel* givenNote_ = nullptr;
    QWidget* given_;  ///< shown for an imported row; contains `givenNote_`
    QWidget* holder_;
    QVBoxLayout* lines_;
    QPushButton* add_;
    TrialBox* trial_;
    QTimer rest_;  ///< delays `showRoom` after a change
    std::optional<std::size_t> card_;
    bool builtGiven_ = false;
    std::vector<std::string> builtShape_;
    std::vector<Line*> built_;
    std::optional<std::size_t> focusAfterRebuild_;  ///< the part that was moved by a key
};

}  // namespace tenter::desktop::panels
