#include "sheet_compare/sheet_dialog.h"

#include <QClipboard>
#include <QCoreApplication>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QRegularExpression>
#include <QSignalBlocker>
#include <QStandardPaths>
#include <QVBoxLayout>
#include <algorithm>

#include "controls/dialog_foot.h"
#include "controls/inks.h"
#include "css/rules.h"
#include "document/refusal.h"
#include "document/setting_title.h"
#include "document/wording.h"
#include "project/utf8.h"
#include "units/length.h"

namespace tenter::desktop::sheet_compare {

namespace {

enum Column { Setting, InProject, InStylesheet, columns };
constexpr int leastValue = 160;  // px, widths of the columns of values
constexpr int mostValue = 280;
constexpr int typingPause = 200;  // ms without typing before the stylesheet is read

QLabel* paragraph(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setWordWrap(true);
    return label;
}

/// A text of core that the window has a translation for.
QString translated(const QString& text) {
    return QCoreApplication::translate("QObject", text.toUtf8().constData());
}

/// `Text › Heading font size` in the language of the window.
QString nameOf(const start::SheetDifference& difference) {
    return difference.path.empty() ? QObject::tr("Breakpoints") : settingPlaceTitle(difference.path);
}

/// `1.75 rem` as the fields of the panels have it; empty for what is no length.
QString lengthTitle(const std::string& css) {
    static const QRegularExpression number("^-?[0-9.]+");
    const auto length = units::Length::parse(css);
    const QString unit = QString::fromStdString(css).remove(number);
    if (!length || length->isKeyword() || unit.isEmpty()) return {};
    return figure(length->value(), 4) + QChar(0x00A0) + unit;
}

/// A value in the words of the window.
QString valueTitle(const std::string& words, const project::Json& value) {
    const bool isRamp = value.is_array() && value.size() == 2 && value[0].is_array() &&
                        value[0].size() == 2 && value[1].is_array() && value[1].size() == 2;
    if (!isRamp) {
        const QString length = value.is_string() ? lengthTitle(value.get<std::string>()) : QString();
        return length.isEmpty() ? translated(QString::fromStdString(words)) : length;
    }
    const auto number = [&](std::size_t point, std::size_t index) {
        return pixels(value[point][index].is_number() ? value[point][index].get<double>() : 0);
    };
    //: A font size at two viewport widths
    return QObject::tr("%1 at %2, %3 at %4").arg(number(0, 1), number(0, 0), number(1, 1), number(1, 0));
}

}  // namespace

bool looksLikeCss(const QString& text) {
    static const QRegularExpression rule("[^{}]+\\{[^{}]*:[^{}]*\\}");
    static const QRegularExpression tag("<[a-zA-Z!/]");
    return text.contains(rule) && !text.contains(tag);
}

SheetDialog::SheetDialog(Document& document, QWidget* parent)
    : QDialog(parent),
      document_(document),
      box_(new QPlainTextEdit(this)),
      state_(paragraph({}, this)),
      table_(new QTreeWidget(this)) {
    setWindowTitle(QObject::tr("Compare with stylesheet"));
    setWindowModality(Qt::WindowModal);
    resize(960, 640);
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(24, 24, 24, 16);
    box->setSpacing(16);
    auto* about =
        paragraph(QObject::tr("For a stylesheet that is live and was changed there. Tenter shows which "
                              "settings differ from the project. Apply all of them, or some."),
                  this);
    about->setForegroundRole(QPalette::PlaceholderText);
    box->addWidget(about);
    box->addLayout(buildInput());
    box->addLayout(buildTable(), 1);
    box->addLayout(buildFoot());
    typingTimer_.setSingleShot(true);
    typingTimer_.setInterval(typingPause);
    connect(&typingTimer_, &QTimer::timeout, this, &SheetDialog::compare);
    connect(box_, &QPlainTextEdit::textChanged, this, [this] {
        file_.clear();
        typingTimer_.start();
    });
    connect(table_, &QTreeWidget::itemChanged, this, &SheetDialog::updateState);
    updateState();
}

QLayout* SheetDialog::buildInput() {
    auto* input = new QVBoxLayout;
    input->setSpacing(8);
    auto* head = new QHBoxLayout;
    auto* title = new QLabel(QObject::tr("Style&sheet"), this);
    QFont bold = title->font();
    bold.setWeight(QFont::DemiBold);
    title->setFont(bold);
    title->setBuddy(box_);
    auto* open = new QPushButton(QObject::tr("&Open stylesheet…"), this);
    open->setAutoDefault(false);
    head->addWidget(title, 1);
    head->addWidget(open);
    input->addLayout(head);
    QFont fixed = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    fixed.setPointSizeF(font().pointSizeF());
    box_->setFont(fixed);
    box_->setTabChangesFocus(true);
    box_->setLineWrapMode(QPlainTextEdit::NoWrap);
    box_->setPlaceholderText(QObject::tr("Paste the stylesheet here"));
    box_->setAccessibleName(QObject::tr("Stylesheet to compare with"));
    box_->setFixedHeight(128);
    input->addWidget(box_);
    connect(open, &QPushButton::clicked, this, &SheetDialog::openFile);
    return input;
}

QLayout* SheetDialog::buildTable() {
    auto* area = new QVBoxLayout;
    area->setSpacing(8);
    auto* head = new QHBoxLayout;
    state_->setAccessibleName(QObject::tr("Result"));
    all_ = new QPushButton(QObject::tr("Select &all"), this);
    none_ = new QPushButton(QObject::tr("Select &none"), this);
    head->addWidget(state_, 1);
    for (QPushButton* button : {all_, none_}) {
        button->setAutoDefault(false);
        head->addWidget(button, 0, Qt::AlignBottom);
    }
    area->addLayout(head);
    table_->setColumnCount(columns);
    table_->setHeaderLabels(
        {QObject::tr("Setting"), QObject::tr("In the project"), QObject::tr("In the stylesheet")});
    table_->setAccessibleName(QObject::tr("Settings that differ"));
    table_->setRootIsDecorated(false);
    table_->setUniformRowHeights(true);
    table_->setAlternatingRowColors(true);
    table_->header()->setStretchLastSection(false);
    table_->header()->setSectionResizeMode(Setting, QHeaderView::Stretch);
    for (const Column column : {InProject, InStylesheet})
        table_->header()->setSectionResizeMode(column, QHeaderView::Interactive);
    area->addWidget(table_, 1);
    connect(all_, &QPushButton::clicked, this, [this] { setAll(true); });
    connect(none_, &QPushButton::clicked, this, [this] { setAll(false); });
    return area;
}

QLayout* SheetDialog::buildFoot() {
    const controls::DialogFoot foot =
        controls::dialogFoot(this, QObject::tr("A&pply"),
                             QObject::tr("Apply the selected settings (Ctrl+Enter)"), [this] { apply(); });
    consequence_ = foot.hint;
    apply_ = foot.action;
    return foot.layout;
}

void SheetDialog::setSheet(const QString& css, const QString& file) {
    {
        const QSignalBlocker quiet(box_);
        box_->setPlainText(css);
    }
    file_ = file;
    compare();
}

void SheetDialog::showEvent(QShowEvent* event) {
    QDialog::showEvent(event);
    const QString pasted = QGuiApplication::clipboard()->text();
    if (box_->toPlainText().isEmpty() && looksLikeCss(pasted))
        setSheet(pasted);
    else if (revision_ != document_.revision())
        compare();
    box_->setFocus();
}

void SheetDialog::openFile() {
    const QString file =
        QFileDialog::getOpenFileName(this, QObject::tr("Open stylesheet"),
                                     QStandardPaths::writableLocation(QStandardPaths::DownloadLocation),
                                     QObject::tr("Stylesheets (*.css);;All files (*)"));
    if (file.isEmpty()) return;
    QFile sheet(file);
    if (!sheet.open(QIODevice::ReadOnly)) {
        comparison_.reset();
        fillTable();
        state_->setText(
            QObject::tr("%1: this file cannot be read. Check that it exists and that you may read it.")
                .arg(QFileInfo(file).fileName()));
        return;
    }
    // One byte more than the limit is enough to detect that the stylesheet is too large.
    setSheet(QString::fromUtf8(sheet.read(static_cast<qint64>(css::longestSheet) + 1)), file);
}

void SheetDialog::compare() {
    typingTimer_.stop();
    revision_ = document_.revision();
    comparison_.reset();
    const std::string css = box_->toPlainText().toStdString();
    project::Problems problems;
    if (!css.empty())
        comparison_ = start::compareWithSheet(document_.project(), css, file_.toStdString(),
                                              document_.store(), problems);
    fillTable();
    QString state;
    if (comparison_) {
        const int count = static_cast<int>(comparison_->differences.size());
        state = count == 0 ? QObject::tr("The stylesheet has the values of the project.")
                           : QObject::tr("%n setting(s) differ.", nullptr, count);
        for (const std::string& sentence : comparison_->report)
            if (count > 0) state += "\n" + QString::fromStdString(project::visible(sentence));
    }
    for (const project::Problem& problem : problems)
        state += (state.isEmpty() ? "" : "\n") + QString::fromStdString(problem.sentence());
    state_->setText(state);
}

void SheetDialog::fillTable() {
    const QSignalBlocker quiet(table_);
    table_->clear();
    if (comparison_)
        for (const start::SheetDifference& difference : comparison_->differences) {
            QString name = nameOf(difference);
            if (!difference.where.empty()) name += " (" + QString::fromStdString(difference.where) + ")";
            auto* item = new QTreeWidgetItem(table_, {name, valueTitle(difference.before, difference.now),
                                                      valueTitle(difference.after, difference.value)});
            item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
            item->setCheckState(Setting, Qt::Checked);
            for (int column = 0; column < columns; ++column)
                item->setToolTip(column, item->text(column));
        }
    // A ramp is shown whole where there is room for it.
    for (const Column column : {InProject, InStylesheet}) {
        table_->resizeColumnToContents(column);
        table_->header()->resizeSection(column,
                                        std::clamp(table_->columnWidth(column), leastValue, mostValue));
    }
    updateState();
}

std::vector<bool> SheetDialog::chosen() const {
    std::vector<bool> chosen;
    for (int i = 0; i < table_->topLevelItemCount(); ++i)
        chosen.push_back(table_->topLevelItem(i)->checkState(Setting) == Qt::Checked);
    return chosen;
}

void SheetDialog::setAll(bool on) {
    {
        const QSignalBlocker quiet(table_);
        for (int i = 0; i < table_->topLevelItemCount(); ++i)
            table_->topLevelItem(i)->setCheckState(Setting, on ? Qt::Checked : Qt::Unchecked);
    }
    table_->viewport()->update();
    updateState();
}

void SheetDialog::updateState() {
    const std::vector<bool> taken = chosen();
    const int count = static_cast<int>(std::ranges::count(taken, true));
    const int all = static_cast<int>(taken.size());
    apply_->setEnabled(count > 0);
    all_->setEnabled(count < all);
    none_->setEnabled(count > 0);
    consequence_->setText(
        all == 0 ? QString()
                 : QObject::tr("%1 of %2 selected. You can undo the change.").arg(count).arg(all));
}

void SheetDialog::apply() {
    if (!apply_->isEnabled() || !comparison_) return;
    const std::vector<bool> taken = chosen();
    const project::Problems problems = document_.edit(
        QObject::tr("Apply settings of stylesheet"),
        [&](project::Project& project) { start::takeDifferences(project, *comparison_, taken); });
    if (!problems.empty()) {
        state_->setText(refusal(document_.project(), problems.front()));
        return;
    }
    accept();
    Q_EMIT applied(static_cast<int>(std::ranges::count(taken, true)));
}

}  // namespace tenter::desktop::sheet_compare
