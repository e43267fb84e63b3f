#include "panels/wishes_panel.h"

#include <QRegularExpression>
#include <algorithm>
#include <cmath>
#include <utility>

#include "controls/number_editors.h"
#include "controls/text_editor.h"
#include "document/wording.h"
#include "row/lookup.h"

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

QString wishedAt(const project::WishedWidths& widths) {
    if (!widths.from) return widths.upTo ? "to " + pixels(*widths.upTo) : QStringLiteral("at every width");
    // A breakpoint's own width belongs to the band below it.
    if (!widths.upTo) return "above " + pixels(*widths.from);
    return "above " + figure(*widths.from, 1) + " to " + pixels(*widths.upTo);
}

QString capitalised(QString text) {
    text[0] = text[0].toUpper();
    return text;
}

controls::AmountKind orNone(controls::AmountKind kind) {
    kind.keywords = {QString::fromStdString(noWish)};
    return kind;
}

std::optional<double> numberIn(const Json& value, double times) {
    return value.is_number() ? std::optional(value.get<double>() / times) : std::nullopt;
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

/// An example among `most` cards.
QString someCards(int most) {
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
    section("Wishes");
    title_ = sectionLabel();
    title_->setToolTip("What should hold of the sizes at these widths, wherever other edits go");
    title_->setWordWrap(true);
    title_->setMinimumHeight(24);
    title_->setMaximumHeight(QWIDGETSIZE_MAX);
    addWidths();
    wish<int>("Lines up to", "lines up to", &RoleWishes::lines,
              new NumberEditor(orNone(numberKind(1, 50, 1, 0))),
              {[](int lines) { return Json(lines); },
               [](const Json& value) {
                   return value.is_number() ? std::optional(value.get<int>()) : std::nullopt;
               }});
    number("Measure from", "measure from", &RoleWishes::leastMeasure, numberKind(1, 1000, 1, 1));
    number("Measure to", "measure to", &RoleWishes::mostMeasure, numberKind(1, 1000, 1, 1));
    number("Size from", "size from", &RoleWishes::leastSize, numberKind(1, 400, 0.5, 2, "px"));
    number("Size to", "size to", &RoleWishes::mostSize, numberKind(1, 400, 0.5, 2, "px"));

    more_ = fold("More wishes");
    addRatio();
    moreRows_.push_back(choice<bool>("Ramps", "ramps", &RoleWishes::locked,
                                     new SegmentEditor({{"free", "May change"}, {"stay", "Stay"}}),
                                     {{"free", false}, {"stay", true}}));
    auto* growth = number("Growth to", "growth to", &RoleWishes::growth, numberKind(0, 100, 0.25, 2, "px"));
    growth->editor().setToolTip("At most so much larger for every 100 px of page width");
    moreRows_.push_back(growth);
    moreRows_.push_back(choice<bool>("With column", "with column", &RoleWishes::withColumn,
                                     new SegmentEditor({{"with", "Never against"}, {"free", "Free"}}),
                                     {{"with", true}, {"free", false}}));
    auto* zoom =
        number("Zoom to double", "zoom to double", &RoleWishes::zoom, numberKind(200, 2000, 50, 0, "%"), 100);
    zoom->editor().setToolTip("The zoom of the browser by which readers have the type twice as large");
    moreRows_.push_back(zoom);
    using At = project::AtBreakpoints;
    moreRows_.push_back(choice<At>(
        "Breakpoints", "breakpoints", &RoleWishes::breakpoints,
        new ListEditor(
            {{"free", "Sizes may jump"}, {"same", "Same size"}, {"proportional", "Same share of column"}}),
        {{"free", At::Free}, {"same", At::Same}, {"proportional", At::Proportional}}));
    variants_ = choice<bool>("Variants", "variants", &RoleWishes::sameInVariants,
                             new SegmentEditor({{"free", "Own sizes"}, {"same", "Same size"}}),
                             {{"free", false}, {"same", true}});
    variants_->editor().setToolTip(
        "For variants that share a page: at each width all have the same size, and all are solved together");
    moreRows_.push_back(variants_);

    seeking_ = fold("How sizes are sought, for all roles");
    addGeneral();
    addWithout();

    section({});
    addWidget(solve_);
    addFindable("Solve sizes", solve_->button());
}

project::WishedWidths WishesPanel::widths() const {
    return others_ ? *others_ : widthsInScope();
}

project::WishedWidths WishesPanel::widthsInScope() const {
    if (viewing().scope() != Viewing::Scope::ThisBand) return {};
    const auto& bands = viewing().shown().variants[viewing().variant()].bands;
    const std::size_t band = viewing().band();
    return {band > 0 ? bands[band - 1].upTo : std::nullopt, bands[band].upTo};
}

void WishesPanel::addWidths() {
    for_ = new ListEditor({{inScope, "Every width"}});
    property(
        "Hold", "Wishes hold", for_,
        [this](const Project&) {
            const auto found = std::ranges::find(offeredWidths_, widths());
            return Json(others_ && found != offeredWidths_.end()
                            ? std::to_string(found - offeredWidths_.begin())
                            : inScope);
        },
        [](Project&, const Json&) {});
    // Which widths are looked at is no part of the project.
    connect(for_, &controls::Editor::edited, this, [this] {
        const std::string word = for_->value().get<std::string>();
        if (word == inScope)
            others_.reset();
        else if (word == otherWidths)
            others_ = {std::round(viewing().width()), std::nullopt};
        else
            others_ = offeredWidths_[std::stoul(word)];
        refresh();
    });
    controls::AmountKind width = orNone(numberKind(1, 10000, 1, 2, "px"));
    width.usual = 320;
    const auto end = [this, width](const QString& title, const QString& words, auto member) {
        return property(
            title, "Wishes: " + words, new NumberEditor(width),
            [this, member](const Project&) {
                const std::optional<double> held = widths().*member;
                return held ? Json(*held) : Json(noWish);
            },
            [this, member](Project& project, const Json& value) {
                project::WishedWidths moved = widths();
                moved.*member = numberIn(value, 1);
                moveTo(project, moved);
            });
    };
    above_ = end("Above", "above", &project::WishedWidths::from);
    findInstead(for_);
    upTo_ = end("Up to", "up to", &project::WishedWidths::upTo);
    findInstead(for_);
    for (ProjectRow* row : {above_, upTo_}) {
        connect(&row->editor(), &controls::Editor::edited, this, [this] {
            if (!areCrossed_) refresh();
        });
        // Half a number often crosses the other end: only a whole one is refused.
        connect(&row->editor(), &controls::Editor::finished, this, [this] {
            if (areCrossed_) context().say("Widths are to end after they start: change the other end first.");
            areCrossed_ = false;
            refresh();
        });
    }
}

void WishesPanel::moveTo(Project& project, const project::WishedWidths& moved) {
    if (!others_ || moved == *others_) return;
    areCrossed_ = moved.from && moved.upTo && *moved.from >= *moved.upTo;
    if (areCrossed_) return;
    if (project::wishSaidFor(project, viewing().role(), *others_) != nullptr) {
        RoleWishes& entry = project::wishFor(project, viewing().role(), *others_);
        entry.from = moved.from;
        entry.upTo = moved.upTo;
    }
    others_ = moved;
}

void WishesPanel::offerWidths() {
    const project::WishedWidths scope = widthsInScope();
    if (ofRole_ != viewing().role()) others_.reset();
    ofRole_ = viewing().role();
    std::vector<project::WishedWidths> offered;
    const auto offer = [&](const project::WishedWidths& widths) {
        if (widths != scope && std::ranges::find(offered, widths) == offered.end()) offered.push_back(widths);
    };
    if (const auto& wishes = viewing().shown().wishes)
        for (const RoleWishes& entry : wishes->roles)
            if (entry.role == ofRole_) offer({entry.from, entry.upTo});
    if (others_) offer(*others_);
    if (others_ == scope) others_.reset();
    offeredWidths_ = offered;
    std::vector<controls::Choice> choices{{inScope, capitalised(wishedAt(scope))}};
    for (std::size_t i = 0; i < offered.size(); ++i)
        choices.push_back({std::to_string(i), capitalised(wishedAt(offered[i]))});
    choices.push_back({otherWidths, "Other widths…"});
    for_->setChoices(std::move(choices));
    above_->setVisible(others_.has_value());
    upTo_->setVisible(others_.has_value());
}

RoleWishes WishesPanel::wished(const Project& project) const {
    return project::wishedFor(project, viewing().role(), widths());
}

const RoleWishes* WishesPanel::said(const Project& project) const {
    return project::wishSaidFor(project, viewing().role(), widths());
}

void WishesPanel::change(Project& project, const std::function<void(RoleWishes&)>& how) {
    RoleWishes& entry = project::wishFor(project, viewing().role(), widths());
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
ProjectRow* WishesPanel::wish(const QString& title, const QString& words,
                              std::optional<T> RoleWishes::*member, controls::Editor* editor,
                              Manner<T> manner) {
    const std::optional<T> nothing = project::askingNothing().*member;
    const auto asks = [member, nothing](const RoleWishes& wishes) {
        return wishes.*member && wishes.*member != nothing;
    };
    const auto get = [this, member, asks, manner](const Project& project) {
        const RoleWishes wishes = wished(project);
        return asks(wishes) ? manner.shown(*(wishes.*member)) : Json(noWish);
    };
    const auto set = [this, member, asks, nothing, manner](Project& project, const Json& value) {
        change(project, [&](RoleWishes& entry) {
            (entry.*member).reset();
            if (value.is_null()) return;
            const std::optional<T> typed = manner.read(value);
            // What nobody wishes need not be unwished.
            if (typed || asks(wished(project))) entry.*member = typed ? typed : nothing;
        });
    };
    ProjectRow* row = property(title, "Wish: " + words, editor, get, set);
    row->setOptional([this, member](const Project& project) {
        const RoleWishes* const entry = said(project);
        return entry != nullptr && (entry->*member).has_value();
    });
    // Half a number is often past the other one: only a whole one is refused.
    connect(editor, &controls::Editor::finished, this, [this, row] {
        if (isRefused_) {
            context().say("The least is to be no more than the most: change the other one first.");
            row->refresh();
        }
        isRefused_ = false;
    });
    return row;
}

ProjectRow* WishesPanel::number(const QString& title, const QString& words,
                                std::optional<double> RoleWishes::*member, controls::AmountKind kind,
                                double times) {
    return wish<double>(title, words, member, new NumberEditor(orNone(std::move(kind))),
                        {[times](double value) { return Json(value * times); },
                         [times](const Json& value) { return numberIn(value, times); }});
}

template <class T>
ProjectRow* WishesPanel::choice(const QString& title, const QString& words,
                                std::optional<T> RoleWishes::*member, controls::Editor* editor,
                                std::vector<std::pair<std::string, T>> choices) {
    const auto get = [this, member, choices](const Project& project) {
        const T held = (wished(project).*member).value_or(*(project::askingNothing().*member));
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
    ProjectRow* row = property(title, "Wish: " + words, editor, get, set);
    row->setOptional([this, member](const Project& project) {
        const RoleWishes* const entry = said(project);
        return entry != nullptr && (entry->*member).has_value();
    });
    return row;
}

void WishesPanel::relate(RoleWishes& entry, const std::string& other) {
    entry.ratioTo = other;
    if (entry.ratio || entry.leastRatio) return;
    const double own = row::fontSizeHere(viewing(), entry.role).value_or(20);
    const double others = row::fontSizeHere(viewing(), other).value_or(16);
    entry.leastRatio = std::clamp(std::floor(own / others * 20) / 20, 0.1, 10.0);
}

void WishesPanel::addRatio() {
    const auto unsay = [](RoleWishes& entry) {
        entry.ratioTo.reset();
        entry.ratio.reset();
        entry.leastRatio.reset();
    };
    const auto isSaid = [this](const Project& project) {
        const RoleWishes* const entry = said(project);
        return entry != nullptr && entry->ratioTo.has_value();
    };
    ratioTo_ = new ListEditor({{noWish, "No other role"}});
    auto* other = property(
        "Ratio to", "Wish: ratio to a role", ratioTo_,
        [this](const Project& project) { return Json(wished(project).ratioTo.value_or(noWish)); },
        [this, unsay](Project& project, const Json& value) {
            change(project, [&](RoleWishes& entry) {
                if (value.is_string() && value != noWish)
                    relate(entry, value.get<std::string>());
                else
                    unsay(entry);
            });
        });
    other->setOptional(isSaid);
    times_ = property(
        "Times", "Wish: times that role’s size", new NumberEditor(numberKind(0.1, 10, 0.05, 3)),
        [this](const Project& project) {
            const RoleWishes wishes = wished(project);
            return Json(wishes.ratio ? *wishes.ratio : wishes.leastRatio.value_or(1));
        },
        [this, unsay](Project& project, const Json& value) {
            const RoleWishes wishes = wished(project);
            change(project, [&](RoleWishes& entry) {
                unsay(entry);
                if (!value.is_number()) return;
                entry.ratioTo = wishes.ratioTo;
                (wishes.ratio ? entry.ratio : entry.leastRatio) = value.get<double>();
            });
        });
    findInstead(ratioTo_);
    times_->setOptional(isSaid);
    manner_ = property(
        "Ratio is", "Wish: ratio is", new SegmentEditor({{"least", "At least"}, {"exact", "Exactly"}}),
        [this](const Project& project) { return Json(wished(project).ratio ? "exact" : "least"); },
        [this, unsay](Project& project, const Json& value) {
            const RoleWishes wishes = wished(project);
            change(project, [&](RoleWishes& entry) {
                const double held = wishes.ratio ? *wishes.ratio : wishes.leastRatio.value_or(1);
                unsay(entry);
                entry.ratioTo = wishes.ratioTo;
                (value == "exact" ? entry.ratio : entry.leastRatio) = held;
            });
        });
    findInstead(ratioTo_);
    moreRows_.push_back(other);
}

template <class T>
ProjectRow* WishesPanel::general(const QString& title, const QString& words, std::optional<T> Wishes::*member,
                                 controls::Editor* editor, Manner<T> manner) {
    ProjectRow* row = property(
        title, "Solving: " + words, editor,
        [member, manner](const Project& project) {
            return manner.shown(*(project::wishesOf(project).*member));
        },
        [member, manner](Project& project, const Json& value) {
            if (!project.wishes) project.wishes.emplace();
            std::optional<T>& said = (*project.wishes).*member;
            said = value.is_null() ? std::nullopt : manner.read(value);
            if (said == project::usualWishes(project).*member) said.reset();
            project::dropEmptyWishes(project);
        });
    row->setOptional([member](const Project& project) {
        return project.wishes && ((*project.wishes).*member).has_value();
    });
    seekingRows_.push_back(row);
    return row;
}

void WishesPanel::addGeneral() {
    using project::Aim;
    general<Aim>(
        "Aim", "aim", &Wishes::aim,
        new ListEditor(
            {{"nearest", "Nearest to now"}, {"largest", "As large as can be"}, {"calmest", "Least change"}}),
        {[](Aim aim) {
             return Json(aim == Aim::Largest ? "largest" : aim == Aim::Calmest ? "calmest" : "nearest");
         },
         [](const Json& value) {
             return std::optional(value == "largest"   ? Aim::Largest
                                  : value == "calmest" ? Aim::Calmest
                                                       : Aim::Nearest);
         }});
    auto* grid = general<units::Length>(
        "On a grid", "on a grid", &Wishes::grid,
        new NumberEditor(controls::lengthKind({"px", "rem"}, {QString::fromStdString(noWish)}, 0, 16)),
        {[](const units::Length& step) { return Json(step.value() == 0 ? noWish : step.css()); },
         [](const Json& value) {
             return value.is_string() && value != noWish ? units::Length::parse(value.get<std::string>())
                                                         : std::optional(units::Length());
         }});
    grid->editor().setToolTip("Ends of ramps are multiples of it, such as 0.5 px");
    const Manner<double> percent{[](double share) { return Json(share * 100); },
                                 [](const Json& value) { return numberIn(value, 100); }};
    const auto share = [](double most) { return new NumberEditor(numberKind(0, most, 1, 1, "%")); };
    general<double>("Longer copy", "room for longer copy", &Wishes::reserve, share(50), percent)
        ->editor()
        .setToolTip("Lines keep to their number if the copy grows by so much, as in another language");
    general<double>("Slack", "slack", &Wishes::slack, share(20), percent)
        ->editor()
        .setToolTip("Kept free of each line where lines are counted: browsers differ");
    general<double>("Under 500 px", "slack under 500 px", &Wishes::narrowSlack, share(20), percent);
}

void WishesPanel::addWithout() {
    auto* cards = new controls::TextEditor([this](const QString& text) {
        const auto most = static_cast<int>(document().project().cards.size());
        static const QRegularExpression shape("^\\s*(\\d+([,\\s]+\\d+)*)?[,\\s]*$");
        const auto isCard = [most](int card) { return card >= 0 && card < most; };
        return shape.match(text).hasMatch() && std::ranges::all_of(cardsIn(text), isCard)
                   ? QString()
                   : QString("cards are counted from 1 to %1, such as %2").arg(most).arg(someCards(most));
    });
    cards->setPlaceholder("none");
    auto* row = property(
        "Without cards", "Solving: without cards", cards,
        [](const Project& project) {
            return Json(
                cardsTitle(project.wishes ? project.wishes->without : std::vector<int>()).toStdString());
        },
        [](Project& project, const Json& value) {
            if (!project.wishes) project.wishes.emplace();
            project.wishes->without.clear();
            if (value.is_string())
                project.wishes->without = cardsIn(QString::fromStdString(value.get<std::string>()));
            project::dropEmptyWishes(project);
        });
    row->setOptional(
        [](const Project& project) { return project.wishes && !project.wishes->without.empty(); });
    seekingRows_.push_back(row);
}

void WishesPanel::count(controls::Fold* fold, const std::vector<ProjectRow*>& rows) {
    fold->setMade(static_cast<int>(std::ranges::count_if(rows, &ProjectRow::isSaid)));
}

void WishesPanel::refresh() {
    const Project& project = viewing().shown();
    std::vector<std::string> others = project::roles(project);
    std::erase(others, viewing().role());
    if (others != offered_) {
        offered_ = others;
        std::vector<controls::Choice> choices{{noWish, "No other role"}};
        for (const std::string& role : offered_)
            choices.push_back({role, roleTitle(role)});
        ratioTo_->setChoices(std::move(choices));
    }
    offerWidths();
    const bool many = project.variants.size() > 1;
    title_->setText("Wishes, " + wishedAt(widths()) + (many ? ", in every variant" : ""));
    const bool related = wished(project).ratioTo.has_value();
    times_->setVisible(related);
    manner_->setVisible(related);
    variants_->setVisible(many);
    Panel::refresh();
    count(more_, moreRows_);
    count(seeking_, seekingRows_);
    solve_->refresh();
}

}  // namespace tenter::desktop::panels
