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
    add(QObject::tr("Copy &stylesheet"), keys(Qt::ControlModifier | Qt::ShiftModifier),
        &Exports::copyStylesheet);
    add(QObject::tr("Copy stylesheets of &all variants"),
        keys(Qt::ControlModifier | Qt::ShiftModifier | Qt::AltModifier), &Exports::copyAllStylesheets);
    add(QObject::tr("Copy &markup"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_M), &Exports::copyMarkup);
    add(QObject::tr("Copy stylesheet and mar&kup"), {}, &Exports::copyBoth);
    add(QObject::tr("Copy &class names"), {}, &Exports::copyClasses);
    copySize_ = add(QObject::tr("Copy &font size of selected text"),
                    keys(Qt::ControlModifier | Qt::AltModifier), &Exports::copySize);
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
    note_.showMessage(QObject::tr(
        "This row keeps the markup of its page, so there is none to copy. Edit › Use Tenter’s markup gives "
        "the "
        "row markup of its own."));
    return false;
}

std::optional<std::string> Exports::stylesheet(const std::vector<std::size_t>& variants) {
    project::Problems problems;
    auto css = stylesheetOf(session_.document.project(), variants, problems);
    if (!css)
        problems_.showProblems(
            QObject::tr("The stylesheet was not copied. The imported row has these problems:"), problems);
    else if (!problems.empty())
        problems_.showProblems(QObject::tr("The stylesheet was copied. The imported row has these problems:"),
                               problems);
    else
        problems_.hide();
    return css;
}

QString Exports::title(const std::vector<std::size_t>& variants) const {
    const project::Row& row = session_.document.project().row();
    const QString title = variants.size() == 1
                              ? QString::fromStdString(row.variants[variants[0]].className)
                              : QObject::tr("%n variant(s)", nullptr, static_cast<int>(variants.size()));
    return row.given ? QObject::tr("%1, for the imported row").arg(title) : title;
}

void Exports::put(const QString& what, const QString& of, const std::string& text) {
    QGuiApplication::clipboard()->setText(QString::fromStdString(text));
    const QString lines = linesTitle(static_cast<std::size_t>(std::ranges::count(text, '\n')));
    const QString said =
        (session_.shown.isProposal()
             ? QObject::tr("%1 copied: %2, %3, with the current sizes, not those of the preview")
             : QObject::tr("%1 copied: %2, %3"))
            .arg(what, of, lines);
    note_.showMessage(said);
    if (control_ != nullptr && control_->isVisible())
        QToolTip::showText(control_->mapToGlobal(QPoint(0, control_->height() - 8)), said, control_, {},
                           shownFor);
}

void Exports::copyStylesheet() {
    const std::vector<std::size_t> variants{session_.view.variant()};
    if (const auto css = stylesheet(variants)) put(QObject::tr("Stylesheet"), title(variants), *css);
}

void Exports::copyAllStylesheets() {
    const std::vector<std::size_t> variants = project::everyVariant(session_.document.project());
    if (const auto css = stylesheet(variants)) put(QObject::tr("Stylesheet"), title(variants), *css);
}

void Exports::copyMarkup() {
    if (!hasOwnMarkup()) return;
    const std::size_t variant = session_.view.variant();
    put(QObject::tr("Markup"), title({variant}), markupOf(session_.document.project(), variant));
}

void Exports::copyBoth() {
    if (!hasOwnMarkup()) return;
    const std::size_t variant = session_.view.variant();
    const auto css = stylesheet({variant});
    if (!css) return;
    put(QObject::tr("Stylesheet and markup"), title({variant}),
        "<style>\n" + *css + "</style>\n" + markupOf(session_.document.project(), variant));
}

void Exports::copyClasses() {
    if (!hasOwnMarkup()) return;
    const std::size_t variant = session_.view.variant();
    put(QObject::tr("Class names"), title({variant}), classesOf(session_.document.project(), variant) + "\n");
}

void Exports::copySize() {
    const std::string css = fontSizeOf(session_.document.project(), session_.view.variant(),
                                       session_.view.width(), session_.selection.role());
    QGuiApplication::clipboard()->setText(QString::fromStdString(css));
    note_.showMessage(QObject::tr("%1 font size copied: %2")
                          .arg(roleTitle(session_.selection.role()), QString::fromStdString(css)));
}

}  // namespace tenter::desktop::window
