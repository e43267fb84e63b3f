// The window in other languages: German, a made-up one with long texts, and one that is read from right to
// left.
#include "language/language.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QMenuBar>
#include <QScrollBar>
#include <QStyleOptionComboBox>
#include <QTranslator>
#include <QTreeView>

#include "axis/data_dialog.h"
#include "compare/compare_dialog.h"
#include "controls/number_field.h"
#include "document/handover.h"
#include "document/setting_title.h"
#include "document/wording.h"
#include "export/page_folder_dialog.h"
#include "export/picture_dialog.h"
#include "export/pictures_dialog.h"
#include "export/spec_sheet_dialog.h"
#include "export/stylesheet_dialog.h"
#include "export/tokens_dialog.h"
#include "findings/caution.h"
#include "help/about_dialog.h"
#include "help/manual.h"
#include "help/manual_window.h"
#include "help/shortcut_dialog.h"
#include "new_row/look_tile.h"
#include "new_row/new_row_dialog.h"
#include "page_import/import_dialog.h"
#include "panels/binding.h"
#include "panels/pictures_panel.h"
#include "sheet_compare/sheet_dialog.h"
#include "showing.h"
#include "start_page/project_tile.h"
#include "window/undo_list.h"

namespace tenter::desktop {

namespace {

const QString sample = QStringLiteral(TENTER_SOURCE_DIR "/sample-projects/shore-walks.tenter.json");

/// A language that no one speaks: each text is 40 % longer, has accents and stands in brackets. Placeholders,
/// keys for menus, markup and patterns of files stay.
class LongLanguage : public QTranslator {
public:
    using QTranslator::QTranslator;
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* text, const char*, int) const override {
        // Qt has texts of its own, and letters for menus are none.
        if (qstrcmp(context, "QObject") != 0 || qstrcmp(text, "afvolszbhp") == 0) return {};
        return lengthened(QString::fromUtf8(text));
    }

    static QString lengthened(const QString& text) {
        static const QRegularExpression kept("%n|%\\d|&.|<[^>]*>|\\([^)]*\\*[^)]*\\)|;;");
        static const QMap<QChar, QChar> accents{
            {'a', u'å'}, {'e', u'é'}, {'i', u'î'}, {'o', u'ö'}, {'u', u'ü'}};
        QString all;
        qsizetype from = 0;
        qsizetype length = 0;
        const auto accent = [&](const QString& plain) {
            for (const QChar letter : plain)
                all += accents.value(letter, letter);
            length += plain.size();
        };
        for (auto match = kept.globalMatch(text); match.hasNext();) {
            const QRegularExpressionMatch one = match.next();
            accent(text.mid(from, one.capturedStart() - from));
            all += one.captured();
            from = one.capturedEnd();
        }
        accent(text.mid(from));
        static const QString more = " önlý möre";
        const qsizetype wanted = std::max<qsizetype>(1, (length * 4 + 9) / 10 - 2);
        const QString filling = more.repeated(wanted / more.size() + 1).left(wanted);
        return '[' + all + filling + ']';
    }
};

/// What people read of `text` in their language: without markup, the mark of the key, and paths of files.
QString readable(QString text) {
    text.remove(QRegularExpression("<[^>]*>| /\\S+"));
    return text.remove(QRegularExpression("&(?=\\S)"));
}

QString nameOf(const QWidget& widget) {
    const auto* label = qobject_cast<const QLabel*>(&widget);
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    const QString text = label != nullptr ? label->text() : button != nullptr ? button->text() : QString();
    return QStringLiteral("%1 “%2” (%3 × %4, wants %5 × %6)")
        .arg(widget.metaObject()->className(), text.left(60))
        .arg(widget.width())
        .arg(widget.height())
        .arg(widget.minimumSizeHint().width())
        .arg(widget.minimumSizeHint().height());
}

bool isCut(const QLabel& label) {
    if (label.text().isEmpty()) return false;
    if (label.wordWrap())
        return label.minimumSizeHint().width() > label.width() ||
               label.heightForWidth(label.width()) > label.height();
    return label.sizeHint().width() > label.width() || label.sizeHint().height() > label.height();
}

bool isCut(const QAbstractButton& button) {
    return !button.text().isEmpty() && (button.minimumSizeHint().width() > button.width() ||
                                        button.minimumSizeHint().height() > button.height());
}

bool isCut(const QTabBar& tabs) {
    for (int i = 0; i < tabs.count(); ++i)
        if (tabs.tabRect(i).width() < tabs.fontMetrics().horizontalAdvance(tabs.tabText(i)) ||
            tabs.tabRect(i).right() >= tabs.width())
            return true;
    return false;
}

/// The content of a scroll area without a horizontal scroll bar is cut if it is wider than the area.
bool isCut(const QScrollArea& area) {
    return area.horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff && area.widget() != nullptr &&
           area.widget()->width() > area.viewport()->width();
}

/// Choices whose text is not shown whole: in the field, or in its list.
QStringList cutChoices(QComboBox& choices) {
    QStyleOptionComboBox option;
    option.initFrom(&choices);
    option.editable = choices.isEditable();
    const QRect field =
        choices.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &choices);
    QStringList cut;
    // What is typed scrolls.
    const QString current = choices.isEditable() ? QString() : choices.currentText();
    if (choices.fontMetrics().horizontalAdvance(current) > field.width())
        cut << QStringLiteral("choice “%1” (%2 of %3)")
                   .arg(current)
                   .arg(field.width())
                   .arg(choices.fontMetrics().horizontalAdvance(current));
    choices.showPopup();
    QTest::qWait(20);
    if (choices.view()->sizeHintForColumn(0) > choices.view()->viewport()->width())
        cut << QStringLiteral("choices of “%1” (%2 of %3)")
                   .arg(choices.accessibleName())
                   .arg(choices.view()->viewport()->width())
                   .arg(choices.view()->sizeHintForColumn(0));
    choices.hidePopup();
    return cut;
}

/// Everything in `top` whose text is not shown whole.
QStringList cutIn(const QWidget& top) {
    QStringList found;
    const auto look = [&](const auto& widgets) {
        for (const auto* widget : widgets)
            if (widget->isVisible() && isCut(*widget)) found << nameOf(*widget);
    };
    look(top.findChildren<QLabel*>());
    look(top.findChildren<QAbstractButton*>());
    look(top.findChildren<QTabBar*>());
    look(top.findChildren<QScrollArea*>());
    return found;
}

/// Adds the texts of `top` that are not in the made-up language, although they have words of the window.
/// `names` are those of the project.
void findUntranslated(const QWidget& top, const QStringList& names, QSet<QString>& found) {
    // Names of browsers, formats and units, and numbers.
    static const QRegularExpression own(
        "^([^A-Za-z]|px|rem|em|vw|cqi|Chromium|Firefox|Tenter|SVG|PNG|PDF|HTML|CSS|JPEG|WebP|AVIF|A4|Letter)*"
        "$");
    const auto look = [&](const QWidget& widget, const QString& text) {
        if (text.contains('[') || names.contains(text) || own.match(readable(text)).hasMatch()) return;
        // Their texts are core's, and Qt's.
        if (qobject_cast<const findings::Caution*>(&widget) != nullptr ||
            qobject_cast<const new_row::LookTile*>(&widget) != nullptr ||
            qobject_cast<const QDialogButtonBox*>(widget.parentWidget()) != nullptr)
            return;
        found << QStringLiteral("%1 “%2”").arg(widget.metaObject()->className(), text.left(80));
    };
    for (const QWidget* widget : top.findChildren<QWidget*>()) {
        if (!widget->isVisible()) continue;
        if (const auto* label = qobject_cast<const QLabel*>(widget)) look(*widget, label->text());
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) look(*widget, button->text());
        if (const auto* tabs = qobject_cast<const QTabBar*>(widget))
            for (int i = 0; i < tabs->count(); ++i)
                look(*widget, tabs->tabText(i));
        look(*widget, widget->toolTip());
        look(*widget, widget->accessibleName());
    }
}

}  // namespace

class LanguageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() { language::use("en"); }

    void theSystemChoosesTheLanguage() {
        QCOMPARE(language::available().first(), QString("en"));
        QVERIFY(language::available().contains("de"));
        QCOMPARE(language::chosenFrom({"de-AT", "de", "en"}), QString("de"));
        QCOMPARE(language::chosenFrom({"xx-YY", "en-GB", "de"}), QString("en"));
        QCOMPARE(language::chosenFrom({"xx"}), QString("en"));
    }

    void englishHasItsPlurals() {
        QCOMPARE(columnsTitle(1), QString("1 column"));
        QCOMPARE(columnsTitle(3), QString("3 columns"));
    }

    void germanHasItsPluralsAndNumbers() {
        language::use("de");
        QCOMPARE(columnsTitle(1), QString("1 Spalte"));
        QCOMPARE(columnsTitle(3), QString("3 Spalten"));
        QCOMPARE(pixels(1320.5), QString("1320,5\u00A0px"));
        QCOMPARE(widthsInSentence(931.25, 1320), QString("von 931,25 bis 1320\u00A0px"));
        QCOMPARE(percent(0.005, 1), QString("0,5\u00A0%"));
        QCOMPARE(QObject::tr("&Save"), QString("&Speichern"));
        language::use("en");
        QCOMPARE(pixels(1320.5), QString("1320.5\u00A0px"));
        QCOMPARE(QObject::tr("&Save"), QString("&Save"));
    }

    void germanFieldsTakeADecimalComma() {
        language::use("de");
        controls::AmountKind kind;
        kind.units = {"em", "px"};
        kind.plain = false;
        controls::NumberField field(kind, nullptr);
        field.setAmount({1.25, "em"});
        QCOMPARE(field.text(), QString("1,25 em"));
        for (const QString typed : {"1,5", "1.5"}) {
            const controls::Reading reading = controls::read(typed, kind, field.amount());
            QCOMPARE(reading.state, controls::Reading::State::Acceptable);
            QCOMPARE(reading.amount.value, 1.5);
        }
        QCOMPARE(panels::readRatio("1,5"), project::Json("1.5/1"));
        // The keyword has a German word, and can be typed as in CSS.
        kind.keywords = {"none"};
        QCOMPARE(controls::formatted({0, "none"}, kind), QString("ohne"));
        for (const QString typed : {"ohne", "none"}) {
            const controls::Reading reading = controls::read(typed, kind, field.amount());
            QCOMPARE(reading.state, controls::Reading::State::Acceptable);
            QCOMPARE(reading.amount.unit, QString("none"));
        }
        QCOMPARE(controls::read("oh", kind, field.amount()).state, controls::Reading::State::Intermediate);
        QVERIFY(controls::requirement(kind).startsWith("geben Sie eine Zahl von 0 bis 10000 ein"));
    }

    // The window is German, its project and its stylesheet are not.
    void aGermanNumberReachesTheStylesheetWithItsPoint() {
        language::use("de");
        const auto window = shownWindow(sample);
        auto& side = *window->findChild<panels::SidePanel*>();
        side.openPanel(panels::PanelKind::Text);
        waitForJobs(*window);
        controls::NumberField* weight = nullptr;
        for (auto* field : side.findChildren<controls::NumberField*>())
            if (field->accessibleName() == QString::fromUtf8("Überschrift: Zeilenhöhe")) weight = field;
        QVERIFY(weight != nullptr);
        weight->setFocus();
        weight->selectAll();
        QTest::keyClicks(weight, "1,35");
        QTest::keyClick(weight, Qt::Key_Return);
        QCOMPARE(weight->text(), QString("1,35"));
        QVERIFY(QString::fromStdString(project::write(window->session.document.project())).contains("1.35"));
        QCOMPARE(window->session.document.undoStack().undoText(),
                 QString::fromUtf8("„Überschrift: Zeilenhöhe“ ändern"));
    }

    void everySettingHasTheNameOfItsField() {
        for (const QString code : {"en", "de"}) {
            language::use(code);
            const auto window = shownWindow(sample);
            const auto bindings = window->findChildren<panels::Binding*>();
            QVERIFY(bindings.size() > 40);
            for (const panels::Binding* binding : bindings)
                QCOMPARE(settingTitle(binding->path()), binding->name());
        }
    }

    void differencesFromAStylesheetAreNamedInGerman() {
        language::use("de");
        const auto window = shownWindow(sample);
        // The stylesheet of another project, with these settings.
        project::Project changed = window->session.document.project();
        project::Problems problems;
        for (const auto& [path, value] :
             std::initializer_list<std::pair<const char*, const char*>>{{"row/columnGap", R"("3px")"},
                                                                        {"card/padding/top", R"("3px")"},
                                                                        {"card/border/width", R"("3px")"},
                                                                        {"text/heading/size", "33"}})
            for (project::Variant& variant : changed.row().variants)
                for (project::Band& band : variant.bands)
                    QVERIFY(project::setSetting(band.set, path, project::Json::parse(value), problems));
        const auto css = stylesheetOf(changed, {0}, problems);
        QVERIFY(css.has_value());
        sheet_compare::SheetDialog sheet(window->session.document, nullptr);
        sheet.setSheet(QString::fromStdString(*css));
        QStringList names;
        for (int i = 0; i < sheet.table().topLevelItemCount(); ++i)
            names << sheet.table().topLevelItem(i)->text(0).section(" (", 0, 0);
        for (const QString name : {"Reihe › Spaltenabstand", "Abstände › Karte: Innenabstand oben",
                                   "Farbe › Karte: Rahmen: Breite", "Text › Überschrift: Schriftgröße"})
            QVERIFY2(names.contains(name), qPrintable(name + " in\n" + names.join('\n')));
        QCOMPARE(sheet.table().topLevelItem(int(names.indexOf("Reihe › Spaltenabstand")))->text(1),
                 QString("1,75\u00A0rem"));
    }

    void longTextsAreShownWhole() {
        LongLanguage longer;
        QCoreApplication::installTranslator(&longer);
        const auto window = shownWindow(sample);
        auto& side = *window->findChild<panels::SidePanel*>();
        QStringList cut;
        int choicesSeen = 0;
        QSet<QString> untranslated;
        QStringList names{QString::fromStdString(window->session.document.project().name)};
        for (const project::Variant& variant : window->session.document.project().row().variants)
            names << variantTitle(variant);
        const auto look = [&](const QString& screen, const QWidget& top) {
            for (auto* choices : top.findChildren<QComboBox*>()) {
                if (!choices->isVisible()) continue;
                ++choicesSeen;
                for (const QString& one : cutChoices(*choices))
                    cut << screen + ": " + one;
            }
            // Some texts come with a timer, and then the layout follows.
            QTest::qWait(80);
            [[maybe_unused]] const bool settles = QTest::qWaitFor([&] { return cutIn(top).isEmpty(); }, 3000);
            for (const QString& one : cutIn(top))
                cut << screen + ": " + one;
            findUntranslated(top, names, untranslated);
        };
        waitForJobs(*window);
        for (const panels::PanelKind kind :
             {panels::PanelKind::Row, panels::PanelKind::Text, panels::PanelKind::Spacing,
              panels::PanelKind::Colour, panels::PanelKind::Words, panels::PanelKind::Pictures}) {
            side.openPanel(kind);
            waitForJobs(*window);
            look(QStringLiteral("panel %1").arg(static_cast<int>(kind)), *window);
        }
        for (const QAction* action : window->findChild<QMenuBar*>()->actions())
            QVERIFY2(action->menu() == nullptr || action->menu()->sizeHint().width() < window->width(),
                     qPrintable(action->text()));
        Session& session = window->session;
        compare::Comparison comparison(session.layouts, session.document);
        const auto lookAt = [&](QDialog&& dialog, const QString& name) {
            dialog.show();
            QVERIFY(QTest::qWaitForWindowExposed(&dialog));
            waitForJobs(dialog);
            look(name, dialog);
        };
        lookAt(exporting::StylesheetDialog(session, nullptr), "stylesheet");
        lookAt(exporting::PageFolderDialog(session, nullptr), "page folder");
        lookAt(exporting::PicturesDialog(session, nullptr), "pictures");
        lookAt(exporting::SpecSheetDialog(session, nullptr), "spec sheet");
        lookAt(exporting::TokensDialog(session, nullptr), "tokens");
        lookAt(exporting::PictureDialog(session, nullptr), "picture");
        lookAt(compare::CompareDialog(comparison, session, nullptr), "compare");
        lookAt(help::AboutDialog(nullptr), "about");
        lookAt(help::ShortcutDialog(help::shortcutsOf(*window->findChild<QMenuBar*>()), nullptr),
               "shortcuts");
        lookAt(new_row::NewRowDialog(nullptr), "new row");
        lookAt(page_import::ImportDialog(session.document, nullptr), "import");
        page_import::ImportDialog import(session.document, nullptr);
        import.openPage(QStringLiteral(TENTER_SOURCE_DIR "/tests/engines/themes/almanac.html"));
        import.show();
        QVERIFY(QTest::qWaitForWindowExposed(&import));
        waitForJobs(import);
        QTRY_VERIFY(import.reader().result().row.has_value());
        // What the page is called, and an element of it.
        names << "div .month";
        for (const auto* label : import.findChildren<QLabel*>())
            if (label->text().startsWith("almanac.html, ")) names << label->text();
        look("import with a page", import);
        const auto* elements = import.findChild<QTreeView*>();
        constexpr int roles = 1;
        QTRY_VERIFY(elements->columnWidth(roles) >= 40);
        for (QModelIndex at = elements->model()->index(0, roles); at.isValid();
             at = elements->indexBelow(at)) {
            const QString role = at.siblingAtColumn(roles).data().toString();
            QVERIFY2(elements->columnWidth(roles) >= elements->fontMetrics().horizontalAdvance(role),
                     qPrintable(role));
        }
        sheet_compare::SheetDialog sheet(session.document, nullptr);
        sheet.setSheet(".walks-trio { gap: 3px } .walks-trio h3 { font-size: 40px }");
        sheet.show();
        QVERIFY(QTest::qWaitForWindowExposed(&sheet));
        // Why nothing can be compared is core's text.
        for (const auto* label : sheet.findChildren<QLabel*>())
            if (label->text().startsWith("No rule of the stylesheet")) names << label->text();
        look("compare with stylesheet", sheet);
        window->findChild<axis::AxisPane*>()->dataAction()->trigger();
        look("data as table", *window->findChild<axis::DataDialog*>());
        window::showUndoList(session.document.undoStack(), window.get());
        look("undo list", *window->findChild<QDialog*>("undoList"));
        help::ManualWindow manual(nullptr);
        manual.setText(help::manualText(side.topics(), help::shortcutsOf(*window->findChild<QMenuBar*>())));
        manual.show();
        QVERIFY(QTest::qWaitForWindowExposed(&manual));
        look("manual", manual);
        QCOMPARE(manual.page().horizontalScrollBar()->maximum(), 0);
        // The window without a project shows the start page, with samples and without.
        TestWindow bare;
        bare.resize(1280, 800);
        bare.show();
        QVERIFY(QTest::qWaitForWindowExposed(&bare));
        QTRY_VERIFY(!bare.findChildren<start_page::ProjectTile*>().isEmpty());
        for (const auto* tile : bare.findChildren<start_page::ProjectTile*>())
            // The name and the words of a project are its own.
            names << tile->text() << tile->toolTip();
        QVERIFY(names.filter("vårîånts").size() > 2);
        look("start page", bare);
        QVERIFY2(choicesSeen > 15, qPrintable(QString::number(choicesSeen)));
        QCoreApplication::removeTranslator(&longer);
        QVERIFY2(cut.isEmpty(), qPrintable("cut:\n" + cut.join('\n')));
        QVERIFY2(untranslated.isEmpty(),
                 qPrintable("not translated:\n" + QStringList(untranslated.values()).join('\n')));
    }

    // Widths grow to the right in every language, and the row lies as in a browser.
    void aMirroredWindowKeepsTheAxisAndTheRow() {
        QApplication::setLayoutDirection(Qt::RightToLeft);
        const auto window = shownWindow(sample);
        QTest::qWait(50);
        const auto* side = window->findChild<panels::SidePanel*>();
        const auto* axis = window->findChild<axis::AxisPane*>();
        const auto* row = window->findChild<row::RowView*>();
        QVERIFY(side->mapTo(window.get(), QPoint()).x() < axis->mapTo(window.get(), QPoint()).x());
        QCOMPARE(axis->layoutDirection(), Qt::LeftToRight);
        QCOMPARE(row->layoutDirection(), Qt::LeftToRight);
        QCOMPARE(side->layoutDirection(), Qt::RightToLeft);
        QApplication::setLayoutDirection(Qt::LayoutDirectionAuto);
    }
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::LanguageTest)
#include "language_test.moc"
