#include "panels/size_paste.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <algorithm>
#include <nlohmann/json.hpp>

#include "controls/inks.h"
#include "document/wording.h"
#include "project/utf8.h"

namespace tenter::desktop::panels {

namespace {

constexpr qsizetype mostPasted = 20000;  // characters; a rule is some hundreds

project::Json rampJson(const units::Ramp& ramp) {
    const auto point = [](units::RampPoint at) { return project::Json::array({at.width, at.size}); };
    if (ramp.isFlat()) return ramp.from().size;
    return project::Json::array({point(ramp.from()), point(ramp.to())});
}

}  // namespace

ScopeWidths scopeWidths(const Viewing& viewing, project::Follow follow) {
    const project::Project& project = viewing.shown();
    ScopeWidths widths{project.leastWidth, project.mostWidth};
    if (viewing.scope() == Viewing::Scope::ThisBand) {
        const project::Variant& variant = project.variants[viewing.variant()];
        const std::size_t band = viewing.band();
        if (band > 0) widths.from = std::max(widths.from, variant.bands[band - 1].upTo.value_or(widths.from));
        widths.to = std::min(widths.to, variant.bands[band].upTo.value_or(widths.to));
    }
    if (follow == project::Follow::Card) {
        widths.from = viewing.row().cardWidth(widths.from);
        widths.to = std::max(widths.from + 1, viewing.row().cardWidth(widths.to));
    }
    return widths;
}

SizePaste::SizePaste(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      text_(new QPlainTextEdit(this)),
      says_(new QLabel(this)),
      take_(new QPushButton("Take this size", this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 0, 24, 8);
    box->setSpacing(8);
    text_->setPlaceholderText("font-size: clamp(1rem, 0.5rem + 2vw, 2rem)");
    text_->setAccessibleName("A font size as CSS: a value, a declaration or a rule");
    text_->setTabChangesFocus(true);
    text_->setFixedHeight(3 * text_->fontMetrics().lineSpacing() + 12);
    text_->installEventFilter(this);
    says_->setWordWrap(true);
    says_->setTextFormat(Qt::PlainText);
    says_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    says_->setAccessibleName("What the pasted size means");
    auto* cancel = new QPushButton("Cancel", this);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(8);
    foot->addWidget(take_);
    foot->addWidget(cancel);
    foot->addStretch(1);
    box->addWidget(text_);
    box->addWidget(says_);
    box->addLayout(foot);
    connect(text_, &QPlainTextEdit::textChanged, this, &SizePaste::read);
    connect(take_, &QPushButton::clicked, this, &SizePaste::take);
    connect(cancel, &QPushButton::clicked, this, &SizePaste::leave);
    hide();
}

void SizePaste::open() {
    text_->clear();
    show();
    read();
    text_->setFocus();
}

void SizePaste::leave() {
    hide();
    emit left();
}

void SizePaste::refresh() {
    if (!isHidden()) read();
}

void SizePaste::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    context_.viewing.previewSize({});
}

bool SizePaste::eventFilter(QObject* watched, QEvent* event) {
    if (watched == text_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && key->modifiers() == Qt::NoModifier && take_->isEnabled()) {
            take();
            return true;
        }
        if (key->key() == Qt::Key_Escape) {
            leave();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

intake::SizeContext SizePaste::contextOf(project::Follow follow) const {
    const ScopeWidths widths = scopeWidths(context_.viewing, follow);
    intake::SizeContext context;
    context.least = widths.from;
    context.most = widths.to;
    context.root = context_.viewing.shown().page.rootSize;
    return context;
}

void SizePaste::read() {
    const QString typed = text_->toPlainText();
    reading_.reset();
    project::Problems problems;
    if (typed.size() > mostPasted) {
        problems.push_back({"", "", "this is more than a rule", "paste the one rule that sets the size"});
    } else if (!typed.trimmed().isEmpty()) {
        const std::string css = typed.toStdString();
        // What it follows is known once it is read; then the widths are those of what it follows.
        reading_ = intake::readSize(css, contextOf(project::Follow::Viewport), problems);
        if (reading_ && reading_->follow == project::Follow::Card)
            reading_ = intake::readSize(css, contextOf(project::Follow::Card), problems);
    }
    const bool wrong = !reading_ && !problems.empty();
    QPalette ink = palette();
    ink.setColor(QPalette::WindowText, wrong ? controls::caution(ink) : ink.color(QPalette::WindowText));
    says_->setPalette(ink);
    if (wrong) {
        const project::Problem& problem = problems.back();
        QString text = QString::fromStdString(project::visible(
            (problem.place.empty() ? "" : problem.place + ": ") + problem.what + "; " + problem.mend));
        text[0] = text[0].toUpper();
        says_->setText(text + '.');
    } else if (reading_) {
        says_->setText((reading_->exact ? "Exactly: " : "Nearly: ") + QString::fromStdString(reading_->says));
    } else {
        says_->clear();
    }
    says_->setVisible(!says_->text().isEmpty());
    take_->setEnabled(reading_.has_value() && !context_.viewing.showsSaved());
    if (reading_)
        context_.viewing.previewSize(
            Viewing::SizePreview{context_.viewing.role(), reading_->ramp, reading_->follow});
    else
        context_.viewing.previewSize({});
}

void SizePaste::take() {
    if (!reading_) return;
    Viewing& viewing = context_.viewing;
    const std::string path = "text/" + viewing.role();
    const QString name = roleTitle(viewing.role()) + " size, pasted";
    const bool card = reading_->follow == project::Follow::Card;
    viewing.document().endGesture();
    project::Problems problems =
        viewing.setSetting(name, path + "/size", rampJson(reading_->ramp), "paste size");
    if (problems.empty())
        problems = viewing.setSetting(name, path + "/follow", card ? "card" : "viewport", "paste size");
    viewing.document().endGesture();
    if (!problems.empty()) {
        context_.say(name + ": " +
                     QString::fromStdString(problems.front().what + "; " + problems.front().mend));
        return;
    }
    leave();
}

}  // namespace tenter::desktop::panels
