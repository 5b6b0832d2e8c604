package org.amberyard.workbench.shop;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.UpkeepYear;
import org.amberyard.workbench.session.Choices;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.session.Options;
import org.amberyard.workbench.session.PlanOptions;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Plan, place of the bus and year of a task sheet: at first what the views show. */
final class SheetForm {
    private final StudyResult result;
    private final Composite area;
    private final Map<Kind, Combo> combos = new EnumMap<>(Kind.class);

    /** @param changed is run whenever something else is chosen */
    SheetForm(Composite parent, StudyResult result, Choices choices, Runnable changed) {
        this.result = result;
        this.area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(6).applyTo(area);
        StudyInput study = result.input();
        add(Kind.PLAN, Messages.Sheet_plan, PlanOptions.of(result), choices, changed);
        add(Kind.BUS, Messages.Sheet_bus,
                Options.upTo(study.buses().size(), b -> study.buses().get(b).name(), 0), choices, changed);
        add(Kind.YEAR, Messages.Sheet_year,
                Options.upTo(study.years(), y -> String.valueOf(study.baseYear() + y), 0), choices, changed);
    }

    private void add(Kind kind, String label, Options options, Choices choices, Runnable changed) {
        new Label(area, SWT.NONE).setText(label);
        Combo combo = new Combo(area, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().applyTo(combo);
        combo.setItems(options.names().toArray(String[]::new));
        combo.select(options.pick(choices.of(kind)).map(Chosen::place).orElse(-1));
        combo.addListener(SWT.Selection, e -> changed.run());
        combos.put(kind, combo);
    }

    /** The bus-year that is chosen; empty where the plan has no bus in the place then. */
    Optional<UpkeepYear> chosen() {
        int plan = place(Kind.PLAN);
        return plan < 0 ? Optional.empty() : result.plans().get(plan).upkeep().stream()
                .filter(u -> u.record().place() == place(Kind.BUS) && u.record().year() == place(Kind.YEAR)).findFirst();
    }

    private int place(Kind kind) {
        return combos.get(kind).getSelectionIndex();
    }
}
