// The base of the panels: sections of settings, which are refreshed together and can be searched.
#pragma once

#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "controls/fold.h"
#include "panels/project_row.h"
#include "panels/setting_row.h"

namespace tenter::desktop::panels {

/// A setting that “Find setting” can find.
struct Findable {
    QString words;               ///< `Line height`
    QString section;             ///< `Lines`
    QWidget* field;              ///< takes the focus
    std::string subject;         ///< the target it needs; empty: any target
    QString also;                ///< other words for it, such as its accessible name
    QWidget* instead = nullptr;  ///< takes the focus while `field` is not shown; shows it when used
};

class Panel : public QWidget {
    Q_OBJECT

public:
    explicit Panel(Context& context, QWidget* parent = nullptr);
    /// Updates everything.
    virtual void refresh();
    /// Updates what depends on the viewport width only.
    virtual void refreshPixels();
    /// The subjects that the panel can edit besides text roles.
    [[nodiscard]] virtual std::vector<std::string> subjects() const { return {}; }
    /// True if the panel can edit text roles.
    [[nodiscard]] virtual bool takesRoles() const { return false; }
    /// True if its edits apply to the edit scope.
    [[nodiscard]] virtual bool takesScope() const { return true; }
    [[nodiscard]] const std::vector<Findable>& findables() const { return findables_; }
    /// What stands above the panel and does not scroll with it; null if there is nothing.
    [[nodiscard]] virtual QWidget* head() const { return nullptr; }

protected:
    /// Starts a section. What is added next belongs to it.
    QWidget* section(const QString& title);
    /// Shows `text` as the tooltip of the section started last.
    void explain(const QString& text);
    SettingRow* setting(const QString& title, controls::Editor* editor, const std::string& subject,
                        const std::string& setting);
    ProjectRow* property(const QString& title, const QString& name, controls::Editor* editor,
                         ProjectRow::Get get, ProjectRow::Set set);
    void addWidget(QWidget* widget);
    /// Starts a fold in this section. What is added next belongs to it.
    controls::Fold* fold(const QString& title);
    /// Adds a panel as a part of this one.
    void addPart(Panel* part);
    void addFindable(const QString& words, QWidget* field, const std::string& subject = {},
                     const QString& also = {});
    /// What was added last is hidden until `other` is used: a search for it goes to `other`.
    void findInstead(QWidget* other) { findables_.back().instead = other; }
    /// Must be called last: aligns the content at the top.
    void close();
    /// The title of the section started last.
    [[nodiscard]] QLabel* sectionLabel() const { return sectionLabel_; }
    [[nodiscard]] Context& context() const { return context_; }
    [[nodiscard]] Session& session() const { return context_.session; }
    [[nodiscard]] Document& document() const { return context_.session.document; }

private:
    Context& context_;
    QVBoxLayout* panelBox_;
    QVBoxLayout* box_;
    QVBoxLayout* sectionBox_;
    QLabel* sectionLabel_ = nullptr;
    QString sectionTitle_;
    std::vector<Panel*> parts_;
    std::vector<SettingRow*> settings_;
    std::vector<ProjectRow*> properties_;
    std::vector<Findable> findables_;
};

}  // namespace tenter::desktop::panels
