// Pages and stylesheets that Tenter wrote, opened in a program without a project: the window makes the
// project that the command line prints, which engines.own_pages compares with the sample itself at every
// width.
#include <QFileInfo>
#include <QListWidget>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QtTest>

#include "controls/number_field.h"
#include "page_import/import_dialog.h"
#include "project/file.h"
#include "showing.h"

namespace tenter::desktop {

class OwnPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        window_ = activeWindow();
        QVERIFY(!document().hasProject());
    }
    void cleanup() {
        if (auto* dialog = window_->findChild<page_import::ImportDialog*>()) dialog->reject();
        waitForJobs(*window_);
        window_.reset();
    }

    void bringsBackEverySample_data() {
        QTest::addColumn<QString>("sample");
        QTest::addColumn<QStringList>("form");
        const QList<QStringList> forms{{},
                                       {"--unit", "px"},
                                       {"--properties"},
                                       {"--layer"},
                                       {"--no-comments"},
                                       {"--minified"},
                                       {"--unit", "px", "--properties", "--layer", "--minified"}};
        // Every sample and every form: engines.own_pages tests each sample in each form.
        const QFileInfoList files = QDir(samples).entryInfoList({"*.tenter.json"});
        for (qsizetype s = 0; s < files.size(); ++s)
            for (qsizetype f = 0; f < forms.size(); ++f)
                if ((s + f) % 3 == 0)
                    QTest::newRow(qPrintable(files[s].baseName() + " " + forms[f].join(" ")))
                        << files[s].filePath() << forms[f];
    }

    void bringsBackEverySample() {
        QFETCH(QString, sample);
        QFETCH(QStringList, form);
        QTemporaryDir folder;
        const QString site = folder.filePath("site");
        const QString sheet = folder.filePath("row.css");
        run(QStringList{"folder", sample, "--into", site, "--whole-pictures"} + form);
        run(QStringList{"stylesheet", sample, "--all-variants", "--out", sheet} + form);
        project::Problems problems;
        const auto before = project::read(sample.toStdString(), problems);
        QVERIFY(before.has_value());

        import(site + "/index.html");
        const project::Project page = document().project();
        QCOMPARE(written(), run({"intake", site}));
        QVERIFY(!page.row().given.has_value());
        QCOMPARE(page.name, before->name);
        QCOMPARE(page.row().cards.size(), before->row().cards.size());
        for (std::size_t c = 0; c < page.row().cards.size(); ++c)
            QCOMPARE(page.row().cards[c].parts.size(), before->row().cards[c].parts.size());

        cleanup();
        init();
        const QString root =
            QString::number(before->page.rootSize.resolve(units::usualReaderSize, before->mostWidth));
        import(sheet, root);
        QCOMPARE(written(), run({"intake", sheet, "--root", root}));
        QCOMPARE(document().project().row().variants.size(), before->row().variants.size());
    }

    void showsThatTenterWroteThePage() {
        QTemporaryDir folder;
        run({"folder", samples + "/season.tenter.json", "--into", folder.filePath("site"),
             "--whole-pictures"});
        page_import::ImportDialog* dialog = open(folder.filePath("site/index.html"));
        QVERIFY(dialog != nullptr && dialog->reader().result().isOwn);
        const auto labels = dialog->findChildren<QLabel*>();
        QVERIFY(std::ranges::any_of(labels, [](const QLabel* label) {
            return label->isVisible() && label->text().startsWith("Tenter wrote this page.");
        }));
        // Its elements have their roles; what its rules declare is listed.
        const auto* read = dialog->findChild<QTabWidget*>();
        QVERIFY(!read->isTabVisible(0) && read->isTabVisible(1));
        QVERIFY(!dialog->reader().result().found.empty());
    }

    void readsAPageThatWasChangedLikeThatOfOthers() {
        QTemporaryDir folder;
        const QString site = folder.filePath("site");
        run({"folder", samples + "/season.tenter.json", "--into", site, "--whole-pictures"});
        QFile sheet;
        for (const QFileInfo& file : QDir(site).entryInfoList({"*.css"}))
            sheet.setFileName(file.filePath());
        QVERIFY(sheet.open(QIODevice::ReadOnly));
        static const QRegularExpression columns("repeat\\(\\d+,");
        const QString css = QString::fromUtf8(sheet.readAll());
        sheet.close();
        QVERIFY(sheet.open(QIODevice::WriteOnly) && css.contains(columns));
        // More columns than a project can have.
        sheet.write(QString(css).replace(columns, "repeat(300,").toUtf8());
        sheet.close();
        page_import::ImportDialog* dialog = open(site + "/index.html");
        QVERIFY(dialog != nullptr && !dialog->reader().result().isOwn);
        QVERIFY(dialog->reader().result().row.has_value());
        const auto* report = dialog->findChild<QListWidget*>();
        QVERIFY(!report->findItems("is read like a page of another author", Qt::MatchContains).isEmpty());
    }

private:
    Document& document() { return window_->session.document; }

    static QByteArray run(const QStringList& words) {
        QProcess process;
        process.start(TENTER_CLI, words);
        if (!process.waitForFinished(60000) || process.exitCode() != 0) return process.readAllStandardError();
        return process.readAllStandardOutput();
    }

    QByteArray written() { return QByteArray::fromStdString(project::write(document().project())); }

    page_import::ImportDialog* open(const QString& file) {
        QTest::keyClick(window_.get(), Qt::Key_V, Qt::ControlModifier | Qt::ShiftModifier);
        auto* dialog = window_->findChild<page_import::ImportDialog*>();
        if (dialog == nullptr || !QTest::qWaitFor([&] { return dialog->isVisible(); })) return nullptr;
        dialog->openPage(file);
        return QTest::qWaitFor([&] { return !dialog->reader().isReading(); }, 10000) ? dialog : nullptr;
    }

    void import(const QString& file, const QString& root = {}) {
        page_import::ImportDialog* dialog = open(file);
        QVERIFY(dialog != nullptr);
        auto* field = dialog->findChild<controls::NumberField*>();
        QCOMPARE(field->isVisible(), !root.isEmpty());
        if (!root.isEmpty()) field->enter(root);
        QTRY_VERIFY_WITH_TIMEOUT(!dialog->reader().isReading(), 10000);
        QVERIFY(dialog->reader().result().isOwn);
        for (auto* button : dialog->findChildren<QPushButton*>())
            if (button->text() == "&Import row") button->click();
        QVERIFY(!dialog->isVisible() && document().hasProject());
    }

    const QString samples = QStringLiteral(TENTER_SOURCE_DIR "/sample-projects");
    std::unique_ptr<TestWindow> window_;
};

}  // namespace tenter::desktop

QTEST_MAIN(tenter::desktop::OwnPageTest)
#include "own_page_test.moc"
