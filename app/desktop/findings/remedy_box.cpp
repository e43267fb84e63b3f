#include "findings/remedy_box.h"

#include "checks/phrases.h"
#include "controls/text_scale.h"
#include "remedy/wording.h"

namespace tenter::desktop::findings {

RemedyBox::RemedyBox(QWidget* parent) : QWidget(parent), title_(new QLabel(this)), list_(new QVBoxLayout) {
    auto* box = new QVBoxLayout(this);
    // The sides of the delegate's text.
    box->setContentsMargins(24, 0, 16, 8);
    box->setSpacing(4);
    box->addStretch(1);
    title_->setFont(controls::smallFont(title_->font()));
    title_->setForegroundRole(QPalette::PlaceholderText);
    title_->setWordWrap(true);
    box->addWidget(title_);
    list_->setSpacing(4);
    box->addLayout(list_);
    showSearch();
}

void RemedyBox::clear() {
    for (RemedyButton* button : buttons_)
        delete button;
    buttons_.clear();
}

void RemedyBox::showSearch() {
    clear();
    title_->setText(QObject::tr("Trying remedies…"));
}

void RemedyBox::showRemedies(const project::Project& project, const std::vector<remedy::Remedy>& remedies,
                             const std::string& shareOf) {
    clear();
    title_->setText(remedies.empty() ? QObject::tr("Tenter found no remedy for this finding.")
                                     : QObject::tr("Remedies"));
    for (const remedy::Remedy& remedy : remedies) {
        QStringList details;
        for (const std::string& change : remedy::changesOf(project, remedy))
            details << QString::fromStdString(change);
        const std::string effect = remedy::effectOf(remedy, shareOf);
        const std::string where = remedy.where.empty() ? "" : checks::capitalised(remedy.where) + ". ";
        auto* button = new RemedyButton(QString::fromStdString(remedy.label),
                                        QString::fromStdString(where + effect), details.join('\n'), this);
        const int index = static_cast<int>(buttons_.size());
        connect(button, &QPushButton::clicked, this, [this, index] { Q_EMIT chosen(index); });
        list_->addWidget(button);
        // The layout would show it only with the next event.
        button->show();
        buttons_.push_back(button);
    }
}

int RemedyBox::heightOfContent(int width) const {
    const QMargins margins = layout()->contentsMargins();
    const int room = width - margins.left() - margins.right();
    int height = margins.bottom() + title_->heightForWidth(room);
    for (const RemedyButton* button : buttons_)
        height += 4 + button->heightForWidth(room);
    return height + 4;
}

}  // namespace tenter::desktop::findings
