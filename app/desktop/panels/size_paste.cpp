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

constexpr qsizetype mostPasted = 20000;  // characters; a rule has some hundreds

project::Json rampJson(const units::Ramp& ramp) {
    const auto point = [](units::RampPoint at) { return project::Json::array({at.width, at.size}); };
    if (ramp.isFlat()) return ramp.from().size;
    return project::Json::array({point(ramp.from()), point(ramp.to())});
}

}  // namespace

ScopeWidths scopeWidths(const Session& session, const std::string& role, project::Follow follow) {
    const project::Project& project = session.shown.project();
    ScopeWidths widths{project.leastWidth, project.mostWidth};
    if (session.scope.layerOf("text/" + role + "/size") == project::CascadeLayer::Band) {
        const project::Variant& variant = project.row().variants[session.view.variant()];
        const std::size_t band = session.layouts.band();
        if (band > 0) widths.from = std::max(widths.from, variant.bands[band - 1].upTo.value_or(widths.from));
        widths.to = std::min(widths.to, variant.bands[band].upTo.value_or(widths.to));
    }
    if (follow == project::Follow::Card) {
        widths.from = session.layouts.row().cardWidth(widths.from);
        widths.to = std::max(widths.from + 1, session.layouts.row().cardWidth(widths.to));
    }
    return widths;
}

SizePaste::SizePaste(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      text_(new QPlainTextEdit(this)),
      meaning_(new QLabel(this)),
      apply_(new QPushButton(QObject::tr("Apply size"), this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(12, 0, 24, 8);
    box->setSpacing(8);
    text_->setPlaceholderText("font-size: clamp(1rem, 0.5rem + 2vw, 2rem)");
    text_->setAccessibleName(QObject::tr("A font size as CSS: a value, a declaration or a rule"));
    text_->setTabChangesFocus(true);
    text_->setFixedHeight(3 * text_->fontMetrics().lineSpacing() + 12);
    text_->installEventFilter(this);
    meaning_->setWordWrap(true);
    meaning_->setTextFormat(Qt::PlainText);
    meaning_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    meaning_->setAccessibleName(QObject::tr("What the pasted size means"));
    auto* cancel = new QPushButton(QObject::tr("Cancel"), this);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(8);
    foot->addWidget(apply_);
    foot->addWidget(cancel);
    foot->addStretch(1);
    box->addWidget(text_);
    box->addWidget(meaning_);
    box->addLayout(foot);
    connect(text_, &QPlainTextEdit::textChanged, this, &SizePaste::read);
    connect(apply_, &QPushButton::clicked, this, &SizePaste::apply);
    connect(cancel, &QPushButton::clicked, this, &SizePaste::cancel);
    hide();
}

void SizePaste::open() {
    text_->clear();
    show();
    read();
    text_->setFocus();
}

void SizePaste::cancel() {
    hide();
    Q_EMIT closed();
}

void SizePaste::refresh() {
    if (!isHidden()) read();
}

void SizePaste::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    context_.session.plot.previewSize({});
}

bool SizePaste::eventFilter(QObject* watched, QEvent* event) {
    if (watched == text_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && key->modifiers() == Qt::NoModifier && apply_->isEnabled()) {
            apply();
            return true;
        }
        if (key->key() == Qt::Key_Escape) {
            cancel();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

intake::SizeContext SizePaste::contextOf(project::Follow follow) const {
    const ScopeWidths widths = scopeWidths(context_.session, context_.session.selection.role(), follow);
    intake::SizeContext context;
    context.least = widths.from;
    context.most = widths.to;
    const double width = context_.session.view.width();
    context.root =
        context_.session.shown.project().page.at(width).rootSize.resolve(units::usualReaderSize, width);
    return context;
}

void SizePaste::read() {
    const QString typed = text_->toPlainText();
    reading_.reset();
    project::Problems problems;
    if (typed.size() > mostPasted) {
        problems.push_back({"", "", QObject::tr("the text is too long").toStdString(),
                            QObject::tr("paste only the rule that sets the size").toStdString()});
    } else if (!typed.trimmed().isEmpty()) {
        const std::string css = typed.toStdString();
        // Whether it grows with the viewport or the card is known only once it is read.
        reading_ = intake::readSize(css, contextOf(project::Follow::Viewport), problems);
        if (reading_ && reading_->follow == project::Follow::Card)
            reading_ = intake::readSize(css, contextOf(project::Follow::Card), problems);
    }
    const bool wrong = !reading_ && !problems.empty();
    QPalette ink = palette();
    ink.setColor(QPalette::WindowText, wrong ? controls::caution(ink) : ink.color(QPalette::WindowText));
    meaning_->setPalette(ink);
    if (wrong) {
        const project::Problem& problem = problems.back();
        meaning_->setText(QString::fromStdString(problem.sentenceWithPlace()));
    } else if (reading_) {
        meaning_->setText((reading_->exact ? QObject::tr("Exact: %1") : QObject::tr("Approximate: %1"))
                              .arg(QString::fromStdString(reading_->says)));
    } else {
        meaning_->clear();
    }
    meaning_->setVisible(!meaning_->text().isEmpty());
    apply_->setEnabled(reading_.has_value() && !context_.session.shown.showsSaved());
    if (reading_)
        context_.session.plot.previewSize(
            SizePreview{context_.session.selection.role(), reading_->ramp, reading_->follow});
    else
        context_.session.plot.previewSize({});
}

void SizePaste::apply() {
    if (!reading_) return;
    Session& session = context_.session;
    const std::string path = "text/" + session.selection.role();
    const QString name = QObject::tr("Paste %1 size", "role").arg(roleInSentence(session.selection.role()));
    const bool card = reading_->follow == project::Follow::Card;
    session.document.endGesture();
    project::Problems problems =
        session.scope.setSetting(name, path + "/size", rampJson(reading_->ramp), "paste size");
    if (problems.empty())
        problems = session.scope.setSetting(name, path + "/follow", card ? "card" : "viewport", "paste size");
    session.document.endGesture();
    if (!problems.empty()) {
        context_.showRefusal(problems, name);
        return;
    }
    cancel();
}

}  // namespace tenter::desktop::panels
