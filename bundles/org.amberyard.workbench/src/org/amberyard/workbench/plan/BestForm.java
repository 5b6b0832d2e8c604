package org.amberyard.workbench.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.plan.BestPlanAim;
import org.amberyard.core.plan.FillRule.PortRule;
import org.amberyard.core.plan.Role;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.amberyard.study.PlanBest;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;

/** The entries that say what the best plan may decide and must reach. */
final class BestForm {
    private static final int TENTHS = 10;
    private static final int MOST_BUSES_PER_PORT = 20 * TENTHS;

    private final Study study;
    private final Plan plan;
    private final Composite area;
    private final RoleChoice roles;
    private List<Button> programmes;
    private Combo from;
    private Combo to;
    private Combo ports;
    private Spinner busesPerPort;
    private Spinner electric;
    private Combo by;
    private Button engines;

    /** @param changed is run whenever something else is entered */
    BestForm(Composite parent, Study study, Plan plan, Runnable changed) {
        this.study = study;
        this.plan = plan;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(10, 4).applyTo(area);
        roles = new RoleChoice(area, role -> role != Role.ACTIVITY);
        createYears();
        createPorts();
        createProgrammes();
        createGoal();
        for (Control row : area.getChildren()) {
            listen(row, changed);
        }
    }

    private static void listen(Control control, Runnable changed) {
        if (control.getClass() == Composite.class) {
            List.of(((Composite) control).getChildren()).forEach(child -> listen(child, changed));
        } else {
            control.addListener(SWT.Selection, e -> changed.run());
        }
    }

    private static Button check(Composite parent, String text, boolean checked) {
        Button button = new Button(parent, SWT.CHECK);
        button.setText(text);
        button.setSelection(checked);
        return button;
    }

    private List<String> years() {
        Settings settings = study.getSettings();
        return IntStream.range(0, settings.getHorizonYears()).mapToObj(y -> String.valueOf(settings.getBaseYear() + y)).toList();
    }

    private void createYears() {
        Composite row = FormRow.of(area, Messages.Fill_from);
        from = combo(row, years(), 0);
        new Label(row, SWT.NONE).setText(Messages.Fill_to);
        to = combo(row, years(), years().size() - 1);
        engines = check(row, Messages.Best_engines, true);
    }

    private static Combo combo(Composite parent, List<String> texts, int chosen) {
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(texts.toArray(String[]::new));
        combo.select(chosen);
        return combo;
    }

    private void createPorts() {
        Composite row = FormRow.of(area, Messages.Fill_ports);
        ports = combo(row, study.getDepot().getPortTypes().stream().map(ElementNames::of).toList(),
                study.getDepot().getPortTypes().indexOf(PlanBest.usualPort(study, plan)));
        new Label(row, SWT.NONE).setText(Messages.Fill_share);
        busesPerPort = new Spinner(row, SWT.BORDER);
        busesPerPort.setValues(TENTHS, 1, MOST_BUSES_PER_PORT, 1, 1, TENTHS);
    }

    private void createProgrammes() {
        Set<Programme> named = PlanBest.named(plan);
        Composite row = FormRow.of(area, Messages.Best_programmes);
        programmes = study.getProgrammes().stream().map(p -> check(row, ElementNames.of(p), named.contains(p))).toList();
        if (programmes.isEmpty()) {
            new Label(row, SWT.NONE).setText(Messages.Fill_noProgramme);
        }
    }

    private void createGoal() {
        Composite row = FormRow.of(area, Messages.Best_goal);
        electric = new Spinner(row, SWT.BORDER);
        electric.setValues(0, 0, study.getBuses().size(), 0, 1, 5);
        new Label(row, SWT.NONE).setText(Messages.Best_by);
        by = combo(row, years(), years().size() - 1);
    }

    /** Why there is no aim; blank when there is one. */
    String refusal() {
        if (to.getSelectionIndex() < from.getSelectionIndex()) {
            return Messages.Fill_yearsBackwards;
        }
        return roles.chosen().isEmpty() ? Messages.Fill_noPlaces : "";
    }

    /** The aim; empty when the entries make none. */
    Optional<BestPlanAim> aim() {
        return refusal().isEmpty() ? Optional.of(new BestPlanAim(from.getSelectionIndex(), to.getSelectionIndex(), roles.chosen(),
                engines.getSelection(),
                new PortRule(OptionalInt.of(ports.getSelectionIndex()), busesPerPort.getSelection() / (double) TENTHS),
                IntStream.range(0, programmes.size()).filter(p -> programmes.get(p).getSelection()).boxed().toList(), goal()))
                : Optional.empty();
    }

    private Optional<BestPlanAim.Goal> goal() {
        int count = electric.getSelection();
        return count == 0 ? Optional.empty() : Optional.of(new BestPlanAim.Goal(count, by.getSelectionIndex()));
    }
}
