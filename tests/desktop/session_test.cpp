// The state of the window: it is complete in every slot of every signal, whichever slot runs first.
#include <QtTest>
#include <functional>
#include <memory>
#include <vector>

#include "project/cascade.h"
#include "session/engine_sweep.h"
#include "session/session.h"

namespace tenter::desktop {

/// What can be read of a session, as values.
struct Reading {
    project::Project project, untried;
    std::optional<project::Trial> trial;
    ShownProject::Proposal proposal;
    bool showsSaved = false;
    int revision = 0;
    double width = 0;
    std::size_t variant = 0;
    const text::BreakProfile* profile = nullptr;
    std::optional<Place> place;
    std::string role;
    project::CascadeLayer layer = {};
    std::vector<layout::Box> boxes;
    std::size_t wraps = 0;
    std::vector<std::string> findings;
    bool fresh = false;
    std::optional<std::size_t> chosen;
    std::size_t differences = 0;
    bool compared = false;
    friend bool operator==(const Reading&, const Reading&) = default;
};

/// The parts of a session, made one by one, so that a listener can be connected to each of them before the
/// others are.
struct Parts {
    using Listener = std::function<void()>;
    /// Calls `first` at the start of every signal, before any slot of the session, and `last` at its end.
    Parts(const Listener& first, const Listener& last) {
        listenToDocument(first);
        listen(shown = std::make_unique<ShownProject>(document), first);
        listen(view = std::make_unique<ViewState>(document, *shown), first);
        listen(selection = std::make_unique<SelectionModel>(document, *shown), first);
        listen(scope = std::make_unique<EditScope>(document, *view, *selection), first);
        listen(layouts = std::make_unique<LayoutCache>(document, *shown, *view), first);
        listen(checks = std::make_unique<CheckRunner>(document, *shown, *view, *selection, *layouts), first);
        listen(engines = std::make_unique<EngineSweep>(*layouts), first);
        listenToDocument(last);
        listen(shown, last);
        listen(view, last);
        listen(selection, last);
        listen(scope, last);
        listen(layouts, last);
        listen(checks, last);
        listen(engines, last);
    }

    [[nodiscard]] Reading read() const {
        Reading now;
        now.project = shown->project();
        now.untried = shown->untried();
        now.trial = shown->trial();
        now.proposal = shown->proposal();
        now.showsSaved = shown->showsSaved();
        now.revision = shown->revision();
        now.width = view->width();
        now.variant = view->variant();
        now.profile = &view->profile();
        now.place = selection->place();
        now.role = selection->role();
        now.layer = scope->layer();
        for (const layout::LaidPart& part : layouts->layout().parts)
            now.boxes.push_back(part.box);
        for (const checks::Finding& finding : checks->findings())
            now.findings.push_back(finding.says);
        now.wraps = checks->sweep().wraps.size();
        now.fresh = checks->isFresh();
        now.chosen = checks->chosen();
        now.differences = engines->differences().size();
        now.compared = engines->isFresh();
        return now;
    }

    Document document;
    std::unique_ptr<ShownProject> shown;
    std::unique_ptr<ViewState> view;
    std::unique_ptr<SelectionModel> selection;
    std::unique_ptr<EditScope> scope;
    std::unique_ptr<LayoutCache> layouts;
    std::unique_ptr<CheckRunner> checks;
    std::unique_ptr<EngineSweep> engines;

private:
    template <class Source>
    void listen(const std::unique_ptr<Source>& source, const Listener& listener) {
        QObject::connect(source.get(), &Source::changed, &context_, listener);
    }
    void listenToDocument(const Listener& listener) {
        for (const auto signal : {&Document::opened, &Document::changed, &Document::fileChanged})
            QObject::connect(&document, signal, &context_, listener);
    }
    QObject context_;
};

class SessionTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() {
        signals_ = 0;
        open_.clear();
        parts_ = std::make_unique<Parts>([this] { begin(); }, [this] { end(); });
        openSample("shore-walks");
        QTRY_VERIFY(parts_->checks->isFresh());
    }
    void cleanup() {
        QVERIFY(open_.empty());
        parts_.reset();
    }

    void showsTheSameToTheFirstAndTheLastListener_data() {
        QTest::addColumn<std::function<void(Parts&)>>("act");
        const auto row = [](const char* name, std::function<void(Parts&)> act) {
            QTest::newRow(name) << std::move(act);
        };
        const auto edit = [](auto change) {
            return [change](Parts& all) { all.document.edit("Edit", change); };
        };
        row("width", [](Parts& all) { all.view->setWidth(700); });
        row("variant", [](Parts& all) { all.view->setVariant(1); });
        row("break profile", [](Parts& all) { all.view->setProfile(text::gecko()); });
        row("part", [](Parts& all) { all.selection->select(Place{1, 2}, true); });
        row("role", [](Parts& all) { all.selection->selectRole("button"); });
        row("edit scope", [](Parts& all) { all.scope->setLayer(project::CascadeLayer::Band); });
        row("finding", [](Parts& all) {
            all.checks->choose(1);
            all.checks->choose(0);
            all.selection->select(Place{0, {}});
        });
        row("smaller range", edit([](project::Project& project) { project.mostWidth = 800; }));
        row("fewer variants", edit([](project::Project& project) { project.row().variants.resize(1); }));
        row("fewer cards", edit([](project::Project& project) { project.row().cards.resize(1); }));
        row("many cards", edit([](project::Project& project) {
                const std::vector<project::Card> cards = project.row().cards;
                while (project.row().cards.size() < 40)
                    project.row().cards.insert(project.row().cards.end(), cards.begin(), cards.end());
            }));
        row("another role", edit([](project::Project& project) {
                std::get<project::TextPart>(project.part({3, 1})).role = "body";
            }));
        row("text test", [](Parts& all) {
            all.shown->tryOut(project::Trial{project::Trial::Kind::CardMore});
            all.shown->tryOut(std::nullopt);
        });
        row("saved version", [](Parts& all) {
            all.document.edit("Edit", [](project::Project& project) { project.row().cards.resize(2); });
            all.shown->showSaved(true);
            all.document.undoStack().undo();
            all.shown->showSaved(false);
        });
        row("proposal", [](Parts& all) {
            auto proposal = std::make_shared<project::Project>(all.document.project());
            proposal->row().variants.resize(1);
            all.shown->propose(proposal);
            all.document.edit("Edit", [](project::Project& project) { project.mostWidth = 900; });
        });
        row("proposal that follows the document", [](Parts& all) {
            all.shown->setProposer([&all] {
                auto proposal = std::make_shared<project::Project>(all.document.project());
                proposal->leastWidth += 100;
                proposal->row().cards.pop_back();
                return ShownProject::Proposal(proposal);
            });
            all.document.edit("Edit", [](project::Project& project) { project.leastWidth = 1000; });
            all.document.undoStack().undo();
        });
        row("another project", [](Parts& all) {
            all.shown->tryOut(project::Trial{project::Trial::Kind::LongerCopy});
            openSampleIn(all, "night-sky");
        });
    }
    /// While one signal is delivered, slots update their objects and send further signals. None of this may
    /// change what can be read.
    void showsTheSameToTheFirstAndTheLastListener() {
        QFETCH(std::function<void(Parts&)>, act);
        // A state in which everything depends on something else.
        parts_->view->setVariant(2);
        parts_->view->setWidth(1800);
        parts_->selection->select(Place{3, 1});
        parts_->scope->setLayer(project::CascadeLayer::Variant);
        QTRY_VERIFY_WITH_TIMEOUT(parts_->checks->isFresh() && parts_->engines->isFresh(), 20000);
        parts_->checks->choose(0);
        parts_->selection->select(Place{3, 1});
        signals_ = 0;
        act(*parts_);
        QVERIFY(signals_ > 0);
        isComplete();
        QTRY_VERIFY_WITH_TIMEOUT(parts_->checks->isFresh() && parts_->engines->isFresh(), 20000);
    }

    void keepsTheChosenRoleThroughEdits() {
        parts_->selection->select(Place{0, 1});
        QCOMPARE(parts_->selection->role(), std::string("heading"));
        parts_->selection->selectRole("body");
        parts_->document.edit("Edit", [](project::Project& project) { project.row().headingLevel = 4; });
        QCOMPARE(parts_->selection->role(), std::string("body"));
        QCOMPARE(parts_->selection->place(), std::optional(Place{0, 1}));
        parts_->selection->select(Place{0, 1});
        QCOMPARE(parts_->selection->role(), std::string("heading"));
    }

    void startsAnewInAnotherProject() {
        parts_->view->setVariant(1);
        parts_->selection->select(Place{1, 2});
        parts_->scope->setLayer(project::CascadeLayer::Band);
        openSample("night-sky");
        QCOMPARE(parts_->view->variant(), std::size_t{0});
        QVERIFY(!parts_->selection->place());
        QCOMPARE(parts_->selection->role(), std::string("heading"));
        QCOMPARE(parts_->scope->layer(), project::CascadeLayer::Style);
        QVERIFY(parts_->checks->findings().empty() && !parts_->checks->isFresh());
    }

private:
    static void openSampleIn(Parts& parts, const char* name) {
        project::Problems problems;
        QVERIFY(parts.document.open(
            std::string(TENTER_SOURCE_DIR "/sample-projects/") + name + ".tenter.json", problems));
    }
    void openSample(const char* name) { openSampleIn(*parts_, name); }
    void begin() {
        ++signals_;
        open_.push_back(parts_->read());
        isComplete();
    }
    void end() {
        QVERIFY(!open_.empty());
        QVERIFY(open_.back() == parts_->read());
        open_.pop_back();
    }
    /// What can be read agrees with the project that is shown.
    void isComplete() {
        const project::Project& project = parts_->shown->project();
        QVERIFY(parts_->view->variant() < project.row().variants.size());
        QVERIFY(parts_->view->width() >= project.leastWidth && parts_->view->width() <= project.mostWidth);
        const layout::PreparedRow row(project, parts_->view->variant(), parts_->document.store(),
                                      parts_->view->profile());
        const layout::Layout expected = layout::layOutDrawn(row, parts_->view->width());
        const layout::Layout& laid = parts_->layouts->layout();
        QCOMPARE(laid.parts.size(), expected.parts.size());
        for (std::size_t i = 0; i < laid.parts.size(); ++i)
            QVERIFY(laid.parts[i].box == expected.parts[i].box);
        const auto& cards = parts_->document.project().row().cards;
        if (const auto part = parts_->selection->part())
            QVERIFY(part->card < cards.size() && part->part < cards[part->card].parts.size());
        for (const checks::Finding& finding : parts_->checks->findings())
            QVERIFY(!parts_->checks->isFresh() || !finding.place ||
                    finding.place->card < project.row().cards.size());
    }

    std::unique_ptr<Parts> parts_;
    std::vector<Reading> open_;  // at the start of the signals that are being delivered
    int signals_ = 0;
};

}  // namespace tenter::desktop

Q_DECLARE_METATYPE(std::function<void(tenter::desktop::Parts&)>)
QTEST_MAIN(tenter::desktop::SessionTest)
#include "session_test.moc"
