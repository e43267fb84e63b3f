#include "window/exports.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QToolTip>
#include <QWidget>
#include <algorithm>

#include "document/handover.h"
#include "document/wording.h"

namespace tenter::desktop::window {

namespace {

constexpr int shownFor = 4000;  // ms

}  // namespace

Exports::Exports(const Session& session, StatusNote& note, ProblemPanel& problems, QObject* parent)
    : QObject(parent), session_(session), note_(note), problems_(problems) {
    const auto keys = [](Qt::KeyboardModifiers modifiers) {
        return QKeySequence(static_cast<int>(modifiers) | static_cast<int>(Qt::Key_C));
    };
    add("Copy &stylesheet", keys(Qt::ControlModifier | Qt::ShiftModifier), &Exports::copyStylesheet);
    add("Copy stylesheets of &all variants", keys(Qt::ControlModifier | Qt::ShiftModifier | Qt::AltModifier),
        &Exports::copyAllStylesheets);
    add("Copy &markup", QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_M), &Exports::copyMarkup);
    add("Copy stylesheet and mar&kup", {}, &Exports::copyBoth);
    add("Copy &class names", {}, &Exports::copyClasses);
    copySize_ = add("Copy &font size of selected text", keys(Qt::ControlModifier | Qt::AltModifier),
                    &Exports::copySize);
    // Above it what is copied, below it what is written to files.
    auto* line = new QAction(this);
    line->setSeparator(true);
    actions_ << line;
}

void Exports::addDialog(const QString& text, std::function<void()> open) {
    auto* action = new QAction(text, this);
    connect(action, &QAction::triggered, this, std::move(open));
    actions_ << action;
}

QAction* Exports::add(const QString& text, const QKeySequence& keys, void (Exports::*copy)()) {
    auto* action = new QAction(text, this);
    action->setShortcut(keys);
    connect(action, &QAction::triggered, this, copy);
    actions_ << action;
    return action;
}

bool Exports::hasOwnMarkup() {
    if (!session_.document.project().row().given) return true;
    note_.showMessage(
        "This row keeps the markup of its page, so there is none to copy. Edit › Use Tenter’s markup gives "
        "the "
        "row markup of its own.");
    return false;
}

std::optional<std::string> Exports::stylesheet(const std::vector<std::size_t>& variants) {
    project::Problems problems;
    auto css = stylesheetOf(session_.document.project(), variants, problems);
    if (!css)
        problems_.showProblems("The stylesheet was not copied. The imported row has these problems:",
                               problems);
    else if (!problems.empty())
        problems_.showProblems("The stylesheet was copied. The imported row has these problems:", problems);
    else
        problems_.hide();
    return css;
}

QString Exports::title(const std::vector<std::size_t>& variants) const {
    const project::Row& row = session_.document.project().row();
    return (variants.size() == 1 ? QString::fromStdString(row.variants[variants[0]].className)
                                 : QString("%1 variants").arg(variants.size())) +
           (row.given ? ", for the imported row" : "");
}

void Exports::put(const QString& what, const QString& of, const std::string& text) {
    QGuiApplication::clipboard()->setText(QString::fromStdString(text));
    const auto lines = std::ranges::count(text, '\n');
    const QString said =
        what + " copied: " + of + QString(", %1 line%2").arg(lines).arg(lines == 1 ? "" : "s") +
        (session_.shown.isProposal() ? ", with the current sizes, not those of the preview" : "");
    note_.showMessage(said);
    if (control_ != nullptr && control_->isVisible())
        QToolTip::showText(control_->mapToGlobal(QPoint(0, control_->height() - 8)), said, control_, {},
                           shownFor);
}

void Exports::copyStylesheet() {
    const std::vector<std::size_t> variants{session_.view.variant()};
    if (const auto css = stylesheet(variants)) put("Stylesheet", title(variants), *css);
}

void Exports::copyAllStylesheets() {
    const std::vector<std::size_t> variants = project::everyVariant(session_.document.project());
    if (const auto css = stylesheet(variants)) put("Stylesheet", title(variants), *css);
}

void Exports::copyMarkup() {
    if (!hasOwnMarkup()) return;
    const std::size_t variant = session_.view.variant();
    put("Markup", title({variant}), markupOf(session_.document.project(), variant));
}

void Exports::copyBoth() {
    if (!hasOwnMarkup()) return;
    const std::size_t variant = session_.view.variant();
    const auto css = stylesheet({variant});
    if (!css) return;
    put("Stylesheet and markup", title({variant}),
        "<style>\n" + *css + "</style>\n" + markupOf(session_.document.project(), variant));
}

void Exports::copyClasses() {
    if (!hasOwnMarkup()) return;
    const std::size_t variant = session_.view.variant();
    put("Class names", title({variant}), classesOf(session_.document.project(), variant) + "\n");
}

void Exports::copySize() {
    const std::string css = fontSizeOf(session_.document.project(), session_.view.variant(),
                                       session_.view.width(), session_.selection.role());
    QGuiApplication::clipboard()->setText(QString::fromStdString(css));
    note_.showMessage(roleTitle(session_.selection.role()) +
                      " font size copied: " + QString::fromStdString(css));
}

}  // namespace tenter::desktop::window
