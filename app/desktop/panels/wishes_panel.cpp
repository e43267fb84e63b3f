#include "panels/wishes_panel.h"

#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <utility>

#include "controls/glossary.h"
#include "controls/number_editors.h"
#include "controls/text_editor.h"
#include "document/wording.h"
#include "row/lookup.h"
#include "units/whole_width.h"

namespace tenter::desktop::panels {

using controls::ListEditor;
using controls::NumberEditor;
using controls::numberKind;
using controls::SegmentEditor;
using project::Json;
using project::Project;
using project::RoleWishes;
using project::Wishes;

namespace {

const std::string noWish = "none";
const std::string inScope = "scope";
const std::string otherWidths = "other";

/// The whole viewport widths, as for bands: `at every width`, `up to 590 px`, `591–930 px`, `from 931 px`.
QString widthsText(const project::WishWidths& widths) {
    if (!widths.from)
        return widths.upTo ? QObject::tr("up to %1").arg(pixels(*widths.upTo))
                           : QObject::tr("at every width");
    // The width itself is not included, so the range starts at the next whole width.
    const double first = units::firstWholeWidthAbove(*widths.from);
    return widths.upTo ? widthsTitle(first, *widths.upTo) : QObject::tr("from %1").arg(pixels(first));
}

QString capitalised(QString text) {
    text[0] = text[0].toUpper();
    return text;
}

controls::AmountKind orNone(controls::AmountKind kind) {
    kind.keywords = {QString::fromStdString(noWish)};
    return kind;
}

std::optional<double> numberIn(const Json& value, double factor) {
    return value.is_number() ? std::optional(value.get<double>() / factor) : std::nullopt;
}

bool areCrossed(const RoleWishes& wished) {
    return (wished.leastMeasure && wished.mostMeasure && *wished.leastMeasure > *wished.mostMeasure) ||
           (wished.leastSize && wished.mostSize && *wished.leastSize > *wished.mostSize);
}

QString cardsTitle(const std::vector<int>& cards) {
    QStringList numbers;
    for (const int card : cards)
        numbers << QString::number(card + 1);
    return numbers.join(", ");
}

/// An example of card numbers, if there are `most` cards.
QString exampleCards(int most) {
    return most > 4 ? QStringLiteral("2, 5") : most > 1 ? QString("1, %1").arg(most) : QStringLiteral("1");
}

std::vector<int> cardsIn(const QString& text) {
    std::vector<int> cards;
    for (const QString& one : text.split(QRegularExpression("[,\\s]+"), Qt::SkipEmptyParts))
        cards.push_back(one.toInt() - 1);
    std::ranges::sort(cards);
    const auto [from, to] = std::ranges::unique(cards);
    cards.erase(from, to);
    return cards;
}

}  // namespace

WishesPanel::WishesPanel(Context& context, QWidget* parent)
    : Panel(context, parent), solve_(new SolveBox(context)) {
    section(QObject::tr("Wishes"));
    title_ = sectionLabel();
    title_->setToolTip(toolTipText(QObject::tr(glossary::wish)));
    title_->setWordWrap(true);
    title_->setMinimumHeight(24);
    title_->setMaximumHeight(QWIDGETSIZE_MAX);
    addWidths();
    wish<int>(QObject::tr("Lines at most"), QObject::tr("Wish: lines at most"), &RoleWishes::lines,
              new NumberEditor(orNone(numberKind(1, 50, 1, 0))),
              {[](int lines) { return Json(lines); },
               [](const Json& value) {
                   return value.is_number() ? std::optional(value.get<int>()) : std::nullopt;
               }});
    number(QObject::tr("Measure at least"), QObject::tr("Wish: measure at least"), &RoleWishes::leastMeasure,
           numberKind(1, 1000, 1, 1));
    number(QObject::tr("Measure at most"), QObject::tr("Wish: measure at most"), &RoleWishes::mostMeasure,
           numberKind(1, 1000, 1, 1));
    number(QObject::tr("Size at least"), QObject::tr("Wish: size at least"), &RoleWishes::leastSize,
           numberKind(1, 400, 0.5, 2, "px"));
    number(QObject::tr("Size at most"), QObject::tr("Wish: size at most"), &RoleWishes::mostSize,
           numberKind(1, 400, 0.5, 2, "px"));

    more_ = fold(QObject::tr("More wishes"));
    addRatio();
    moreRows_.push_back(choice<bool>(
        QObject::tr("Sizes"), QObject::tr("Wish: sizes"), &RoleWishes::locked,
        new SegmentEditor({{"free", QObject::tr("May change")}, {"stay", QObject::tr("Locked")}}),
        {{"free", false}, {"stay", true}}));
    moreRows_.push_back(number(QObject::tr("Growth at most"), QObject::tr("Wish: growth at most"),
                               &RoleWishes::growth, numberKind(0, 100, 0.25, 2, "px")));
    moreRows_.push_back(choice<bool>(
        QObject::tr("Narrower column"), QObject::tr("Wish: narrower column"), &RoleWishes::withColumn,
        new SegmentEditor({{"with", QObject::tr("No growth")}, {"free", QObject::tr("Free")}}),
        {{"with", true}, {"free", false}}));
    moreRows_.push_back(number(QObject::tr("Double at zoom"), QObject::tr("Wish: double at zoom"),
                               &RoleWishes::zoom, numberKind(200, 2000, 50, 0, "%"), 100));
    using At = project::AtBreakpoints;
    moreRows_.push_back(
        choice<At>(QObject::tr("Breakpoints"), QObject::tr("Wish: breakpoints"), &RoleWishes::breakpoints,
                   new ListEditor({{"free", QObject::tr("Free")},
                                   {"same", QObject::tr("Same size")},
                                   {"proportional", QObject::tr("Same share of column")}}),
                   {{"free", At::Free}, {"same", At::Same}, {"proportional", At::Proportional}}));
    variants_ = choice<bool>(
        QObject::tr("Variants"), QObject::tr("Wish: variants"), &RoleWishes::sameInVariants,
        new SegmentEditor({{"free", QObject::tr("Own sizes")}, {"same", QObject::tr("Same size")}}),
        {{"free", false}, {"same", true}});
    moreRows_.push_back(variants_);

    solver_ = fold(QObject::tr("Solver settings for all roles"));
    addGeneral();
    addWithout();

    section({});
    addWidget(solve_);
    addFindable(QObject::tr("Solve sizes"), solve_->button());
}

project::WishWidths WishesPanel::widths() const {
    return otherWidths_ ? *otherWidths_ : widthsInScope();
}

project::WishWidths WishesPanel::widthsInScope() const {
    if (session().scope.layer() != project::CascadeLayer::Band) return {};
    const auto& bands = session().shown.project().row().variants[session().view.variant()].bands;
    const std::size_t band = session().layouts.band();
    return {band > 0 ? bands[band - 1].upTo : std::nullopt, bands[band].upTo};
}

void WishesPanel::addWidths() {
    widthChoice_ = new ListEditor({{inScope, QObject::tr("Every width")}});
    property(
        QObject::tr("Widths"), QObject::tr("Wishes: widths"), widthChoice_,
        [this](const Project&) {
            const auto found = std::ranges::find(listedWidths_, widths());
            return Json(otherWidths_ && found != listedWidths_.end()
                            ? std::to_string(found - listedWidths_.begin())
                            : inScope);
        },
        [](Project&, const Json&) {});
    // The choice is not a part of the project.
    connect(widthChoice_, &controls::Editor::edited, this, [this] {
        const std::string word = widthChoice_->value().get<std::string>();
        if (word == inScope)
            otherWidths_.reset();
        else if (word == otherWidths)
            otherWidths_ = {std::round(session().view.width()), std::nullopt};
        else
            otherWidths_ = listedWidths_[std::stoul(word)];
        refresh();
    });
    controls::AmountKind width = orNone(numberKind(1, 10000, 1, 2, "px"));
    width.usual = 320;
    const auto end = [this, width](const QString& title, const QString& name, auto member) {
        return property(
            title, name, new NumberEditor(width),
            [this, member](const Project&) {
                const std::optional<double> held = widths().*member;
                return held ? Json(*held) : Json(noWish);
            },
            [this, member](Project& project, const Json& value) {
                project::WishWidths moved = widths();
                moved.*member = numberIn(value, 1);
                moveTo(project, moved);
            });
    };
    above_ = end(QObject::tr("Above"), QObject::tr("Wishes: above"), &project::WishWidths::from);
    findInstead(widthChoice_);
    upTo_ = end(QObject::tr("Up to"), QObject::tr("Wishes: up to"), &project::WishWidths::upTo);
    findInstead(widthChoice_);
    for (ProjectRow* row : {above_, upTo_}) {
        connect(&row->editor(), &controls::Editor::edited, this, [this] {
            if (!areCrossed_) refresh();
        });
        // A half-typed number often crosses the other end: only a finished one is refused.
        connect(&row->editor(), &controls::Editor::finished, this, [this] {
            if (areCrossed_)
                context().showMessage(
                    QObject::tr("“Up to” must be larger than “Above”. Change the other value first."));
            areCrossed_ = false;
            refresh();
        });
    }
}

void WishesPanel::moveTo(Project& project, const project::WishWidths& moved) {
    if (!otherWidths_ || moved == *otherWidths_) return;
    areCrossed_ = moved.from && moved.upTo && *moved.from >= *moved.upTo;
    if (areCrossed_) return;
    if (project::ownWishesFor(project, session().selection.role(), *otherWidths_) != nullptr) {
        RoleWishes& entry = project::ownWishesOrNew(project, session().selection.role(), *otherWidths_);
        entry.from = moved.from;
        entry.upTo = moved.upTo;
    }
    otherWidths_ = moved;
}

void WishesPanel::updateWidthChoices() {
    const project::WishWidths scope = widthsInScope();
    if (otherWidthsRole_ != session().selection.role()) otherWidths_.reset();
    otherWidthsRole_ = session().selection.role();
    std::vector<project::WishWidths> listed;
    const auto list = [&](const project::WishWidths& widths) {
        if (widths != scope && std::ranges::find(listed, widths) == listed.end()) listed.push_back(widths);
    };
    if (const auto& wishes = session().shown.project().row().wishes)
        for (const RoleWishes& entry : wishes->roles)
            if (entry.role == otherWidthsRole_) list({entry.from, entry.upTo});
    if (otherWidths_) list(*otherWidths_);
    if (otherWidths_ == scope) otherWidths_.reset();
    listedWidths_ = listed;
    std::vector<controls::Choice> choices{{inScope, capitalised(widthsText(scope))}};
    for (std::size_t i = 0; i < listed.size(); ++i)
        choices.push_back({std::to_string(i), capitalised(widthsText(listed[i]))});
    choices.push_back({otherWidths, QObject::tr("Other widths…")});
    widthChoice_->setChoices(std::move(choices));
    above_->setVisible(otherWidths_.has_value());
    upTo_->setVisible(otherWidths_.has_value());
}

RoleWishes WishesPanel::wished(const Project& project) const {
    return project::wishesFor(project, session().selection.role(), widths());
}

const RoleWishes* WishesPanel::ownEntry(const Project& project) const {
    return project::ownWishesFor(project, session().selection.role(), widths());
}

void WishesPanel::change(Project& project, const std::function<void(RoleWishes&)>& how) {
    RoleWishes& entry = project::ownWishesOrNew(project, session().selection.role(), widths());
    const RoleWishes before = entry;
    isRefused_ = false;
    how(entry);
    if (areCrossed(wished(project))) {
        entry = before;
        isRefused_ = true;
    }
    project::dropEmptyWishes(project);
}

template <class T>
ProjectRow* WishesPanel::wish(const QString& title, const QString& name, std::optional<T> RoleWishes::*member,
                              controls::Editor* editor, Conversion<T> conversion) {
    const std::optional<T> nothing = project::unlimitedWishes().*member;
    const auto asks = [member, nothing](const RoleWishes& wishes) {
        return wishes.*member && wishes.*member != nothing;
    };
    const auto get = [this, member, asks, conversion](const Project& project) {
        const RoleWishes wishes = wished(project);
        return asks(wishes) ? conversion.shown(*(wishes.*member)) : Json(noWish);
    };
    const auto set = [this, member, asks, nothing, conversion](Project& project, const Json& value) {
        change(project, [&](RoleWishes& entry) {
            (entry.*member).reset();
            if (value.is_null()) return;
            const std::optional<T> typed = conversion.read(value);
            // A wish that does not apply needs no entry that cancels it.
            if (typed || asks(wished(project))) entry.*member = typed ? typed : nothing;
        });
    };
    ProjectRow* row = property(title, name, editor, get, set);
    row->setOptional([this, member](const Project& project) {
        const RoleWishes* const entry = ownEntry(project);
        return entry != nullptr && (entry->*member).has_value();
    });
    // A half-typed number is often beyond the other one: only a finished one is refused.
    connect(editor, &controls::Editor::finished, this, [this, row] {
        if (isRefused_) {
            context().showMessage(
                QObject::tr("The minimum must not exceed the maximum. Change the other one first."));
            row->refresh();
        }
        isRefused_ = false;
    });
    return row;
}

ProjectRow* WishesPanel::number(const QString& title, const QString& name,
                                std::optional<double> RoleWishes::*member, controls::AmountKind kind,
                                double factor) {
    return wish<double>(title, name, member, new NumberEditor(orNone(std::move(kind))),
                        {[factor](double value) { return Json(value * factor); },
                         [factor](const Json& value) { return numberIn(value, factor); }});
}

template <class T>
ProjectRow* WishesPanel::choice(const QString& title, const QString& name,
                                std::optional<T> RoleWishes::*member, controls::Editor* editor,
                                std::vector<std::pair<std::string, T>> choices) {
    const auto get = [this, member, choices](const Project& project) {
        const T held = (wished(project).*member).value_or(*(project::unlimitedWishes().*member));
        const auto found = std::ranges::find(choices, held, &std::pair<std::string, T>::second);
        return found == choices.end() ? Json() : Json(found->first);
    };
    const auto set = [this, member, choices](Project& project, const Json& value) {
        change(project, [&](RoleWishes& entry) {
            (entry.*member).reset();
            for (const auto& [word, means] : choices)
                if (value == word && (wished(project).*member) != means) entry.*member = means;
        });
    };
    ProjectRow* row = property(title, name, editor, get, set);
    row->setOptional([this, member](const Project& project) {
        const RoleWishes* const entry = ownEntry(project);
        return entry != nullptr && (entry->*member).has_value();
    });
    return row;
}

void WishesPanel::setRatioTo(RoleWishes& entry, const std::string& other) {
    entry.ratioTo = other;
    if (entry.ratio || entry.leastRatio) return;
    const double own = row::fontSizeHere(session().layouts.current(), entry.role).value_or(20);
    const double others = row::fontSizeHere(session().layouts.current(), other).value_or(16);
    entry.leastRatio = std::clamp(std::floor(own / others * 20) / 20, 0.1, 10.0);
}

void WishesPanel::addRatio() {
    const auto removeRatio = [](RoleWishes& entry) {
        entry.ratioTo.reset();
        entry.ratio.reset();
        entry.leastRatio.reset();
    };
    const auto isSet = [this](const Project& project) {
        const RoleWishes* const entry = ownEntry(project);
        return entry != nullptr && entry->ratioTo.has_value();
    };
    ratioTo_ = new ListEditor({{noWish, QObject::tr("No other role")}});
    auto* other = property(
        QObject::tr("Ratio to role"), QObject::tr("Wish: ratio to role"), ratioTo_,
        [this](const Project& project) { return Json(wished(project).ratioTo.value_or(noWish)); },
        [this, removeRatio](Project& project, const Json& value) {
            change(project, [&](RoleWishes& entry) {
                if (value.is_string() && value != noWish)
                    setRatioTo(entry, value.get<std::string>());
                else
                    removeRatio(entry);
            });
        });
    other->setOptional(isSet);
    factor_ = property(
        QObject::tr("Ratio"), QObject::tr("Wish: ratio"), new NumberEditor(numberKind(0.1, 10, 0.05, 3)),
        [this](const Project& project) {
            const RoleWishes wishes = wished(project);
            return Json(wishes.ratio ? *wishes.ratio : wishes.leastRatio.value_or(1));
        },
        [this, removeRatio](Project& project, const Json& value) {
            const RoleWishes wishes = wished(project);
            change(project, [&](RoleWishes& entry) {
                removeRatio(entry);
                if (!value.is_number()) return;
                entry.ratioTo = wishes.ratioTo;
                (wishes.ratio ? entry.ratio : entry.leastRatio) = value.get<double>();
            });
        });
    findInstead(ratioTo_);
    factor_->setOptional(isSet);
    factorKind_ = property(
        QObject::tr("Ratio is"), QObject::tr("Wish: ratio is"),
        new SegmentEditor({{"least", QObject::tr("At least")}, {"exact", QObject::tr("Exactly")}}),
        [this](const Project& project) { return Json(wished(project).ratio ? "exact" : "least"); },
        [this, removeRatio](Project& project, const Json& value) {
            const RoleWishes wishes = wished(project);
            change(project, [&](RoleWishes& entry) {
                const double held = wishes.ratio ? *wishes.ratio : wishes.leastRatio.value_or(1);
                removeRatio(entry);
                entry.ratioTo = wishes.ratioTo;
                (value == "exact" ? entry.ratio : entry.leastRatio) = held;
            });
        });
    findInstead(ratioTo_);
    moreRows_.push_back(other);
}

template <class T>
ProjectRow* WishesPanel::general(const QString& title, const QString& name, std::optional<T> Wishes::*member,
                                 controls::Editor* editor, Conversion<T> conversion) {
    ProjectRow* row = property(
        title, name, editor,
        [member, conversion](const Project& project) {
            return conversion.shown(*(project::effectiveWishes(project).*member));
        },
        [member, conversion](Project& project, const Json& value) {
            if (!project.row().wishes) project.row().wishes.emplace();
            std::optional<T>& own = (*project.row().wishes).*member;
            own = value.is_null() ? std::nullopt : conversion.read(value);
            if (own == project::defaultWishes(project).*member) own.reset();
            project::dropEmptyWishes(project);
        });
    row->setOptional([member](const Project& project) {
        return project.row().wishes && ((*project.row().wishes).*member).has_value();
    });
    solverRows_.push_back(row);
    return row;
}

void WishesPanel::addGeneral() {
    using project::Aim;
    general<Aim>(
        QObject::tr("Aim"), QObject::tr("Solver: aim"), &Wishes::aim,
        new ListEditor({{"nearest", QObject::tr("Nearest to current")},
                        {"largest", QObject::tr("Largest sizes")},
                        {"calmest", QObject::tr("Least change over widths")}}),
        {[](Aim aim) {
             return Json(aim == Aim::Largest ? "largest" : aim == Aim::Calmest ? "calmest" : "nearest");
         },
         [](const Json& value) {
             return std::optional(value == "largest"   ? Aim::Largest
                                  : value == "calmest" ? Aim::Calmest
                                                       : Aim::Nearest);
         }});
    general<units::Length>(
        QObject::tr("Size grid"), QObject::tr("Solver: size grid"), &Wishes::grid,
        new NumberEditor(controls::lengthKind({"px", "rem"}, {QString::fromStdString(noWish)}, 0, 16)),
        {[](const units::Length& step) { return Json(step.value() == 0 ? noWish : step.css()); },
         [](const Json& value) {
             return value.is_string() && value != noWish ? units::Length::parse(value.get<std::string>())
                                                         : std::optional(units::Length());
         }});
    const Conversion<double> percent{[](double share) { return Json(share * 100); },
                                     [](const Json& value) { return numberIn(value, 100); }};
    const auto share = [](double most) { return new NumberEditor(numberKind(0, most, 1, 1, "%")); };
    general<double>(QObject::tr("Reserve"), QObject::tr("Solver: reserve"), &Wishes::reserve, share(50),
                    percent);
    general<double>(QObject::tr("Slack"), QObject::tr("Solver: slack"), &Wishes::slack, share(20), percent);
    general<double>(QObject::tr("Slack < 500\u00A0px"), QObject::tr("Solver: slack < 500\u00A0px"),
                    &Wishes::narrowSlack, share(20), percent);
}

void WishesPanel::addWithout() {
    auto* cards = new controls::TextEditor([this](const QString& text) {
        const auto most = static_cast<int>(document().project().row().cards.size());
        static const QRegularExpression shape("^\\s*(\\d+([,\\s]+\\d+)*)?[,\\s]*$");
        const auto isCard = [most](int card) { return card >= 0 && card < most; };
        return shape.match(text).hasMatch() && std::ranges::all_of(cardsIn(text), isCard)
                   ? QString()
                   : QObject::tr("cards are counted from 1 to %1, for example %2")
                         .arg(most)
                         .arg(exampleCards(most));
    });
    cards->setPlaceholder(QObject::tr("none", "cards"));
    auto* row = property(
        QObject::tr("Ignored cards"), QObject::tr("Solver: ignored cards"), cards,
        [](const Project& project) {
            return Json(cardsTitle(project.row().wishes ? project.row().wishes->without : std::vector<int>())
                            .toStdString());
        },
        [](Project& project, const Json& value) {
            if (!project.row().wishes) project.row().wishes.emplace();
            project.row().wishes->without.clear();
            if (value.is_string())
                project.row().wishes->without = cardsIn(QString::fromStdString(value.get<std::string>()));
            project::dropEmptyWishes(project);
        });
    row->setOptional([](const Project& project) {
        return project.row().wishes && !project.row().wishes->without.empty();
    });
    solverRows_.push_back(row);
}

void WishesPanel::showCount(controls::Fold* fold, const std::vector<ProjectRow*>& rows) {
    fold->setCount(static_cast<int>(std::ranges::count_if(rows, &ProjectRow::isSet)));
}

void WishesPanel::refresh() {
    const Project& project = session().shown.project();
    std::vector<std::string> others = project::roles(project);
    std::erase(others, session().selection.role());
    if (others != listedRoles_) {
        listedRoles_ = others;
        std::vector<controls::Choice> choices{{noWish, QObject::tr("No other role")}};
        for (const std::string& role : listedRoles_)
            choices.push_back({role, roleTitle(role)});
        ratioTo_->setChoices(std::move(choices));
    }
    updateWidthChoices();
    const bool many = project.row().variants.size() > 1;
    title_->setText((many ? QObject::tr("Wishes, %1, in every variant") : QObject::tr("Wishes, %1"))
                        .arg(widthsText(widths())));
    const bool related = wished(project).ratioTo.has_value();
    factor_->setVisible(related);
    factorKind_->setVisible(related);
    variants_->setVisible(many);
    Panel::refresh();
    showCount(more_, moreRows_);
    showCount(solver_, solverRows_);
    solve_->refresh();
}

}  // namespace tenter::desktop::panels
