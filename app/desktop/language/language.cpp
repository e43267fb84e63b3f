#include "language/language.h"

#include <QApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QTranslator>
#include <clocale>
#include <memory>
#include <vector>

#include "wording/language.h"

// The resources are in a static library, so they must be asked for. The macro must not be in a namespace.
static void loadTranslations() {
    Q_INIT_RESOURCE(translations);
}

namespace tenter::desktop::language {

namespace {

const QString english = "en";
const QString folder = ":/translations";
const QString prefix = "tenter_";

struct State {
    QString code = english;
    std::vector<std::unique_ptr<QTranslator>> translators;
};

State& state() {
    static State one;
    return one;
}

void install(std::unique_ptr<QTranslator> translator) {
    QCoreApplication::installTranslator(translator.get());
    state().translators.push_back(std::move(translator));
}

/// Replaces the texts of the window by those of `code`. Texts in English need a catalogue, too: it has their
/// plurals.
void install(const QString& code) {
    loadTranslations();
    state().translators.clear();
    state().code = code;
    // Buttons such as Cancel are Qt's.
    auto standard = std::make_unique<QTranslator>();
    if (standard->load(QLocale(code), "qtbase", "_", QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        install(std::move(standard));
    auto own = std::make_unique<QTranslator>();
    if (own->load(folder + '/' + prefix + code + ".qm")) install(std::move(own));
    // The sentences that core composes: findings, remedies, answers.
    if (!wording::useLanguage(code.toStdString())) wording::useLanguage(english.toStdString());
}

void startInEnglish() {
    install(english);
    // The translators end before the application does.
    qAddPostRoutine([] { state() = {}; });
    // The application has set the system's locale for all of C. Numbers in files keep their decimal point.
    std::setlocale(LC_NUMERIC, "C");
}
Q_COREAPP_STARTUP_FUNCTION(startInEnglish)

}  // namespace

QStringList available() {
    loadTranslations();
    QStringList codes{english};
    for (const QString& file : QDir(folder).entryList({prefix + "*.qm"})) {
        const QString code = file.section('.', 0, 0).mid(prefix.size());
        if (code != english) codes << code;
    }
    return codes;
}

QString chosenFrom(const QStringList& wanted) {
    const QStringList codes = available();
    for (const QString& language : wanted) {
        const QString code = language.section(QRegularExpression("[-_]"), 0, 0);
        if (codes.contains(code)) return code;
    }
    return english;
}

void use(const QString& code) {
    install(code.isEmpty() ? chosenFrom(QLocale::system().uiLanguages()) : code);
    const QLocale locale(state().code);
    QLocale::setDefault(locale);
    // Otherwise Qt decides, by its option -reverse.
    if (qobject_cast<QApplication*>(QCoreApplication::instance()) != nullptr)
        QApplication::setLayoutDirection(locale.textDirection() == Qt::RightToLeft ? Qt::RightToLeft
                                                                                   : Qt::LayoutDirectionAuto);
}

QString current() {
    return state().code;
}

QString decimalPoint() {
    return QLocale(state().code).decimalPoint();
}

bool lowersTitles() {
    return state().code == english;
}

}  // namespace tenter::desktop::language
