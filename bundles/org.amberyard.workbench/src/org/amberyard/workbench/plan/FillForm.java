package org.amberyard.workbench.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.plan.FillRule;
import org.amberyard.core.plan.FillRule.Pace;
import org.amberyard.core.plan.FillRule.PortRule;
import org.amberyard.core.plan.Role;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;

/** The entries of a rule that fills a plan. */
final class FillForm {

    private static final int TENTHS = 10;
    private static final int MOST_BUSES_PER_PORT = 20 * TENTHS;
    private static final List<String> PACES = List.of(Messages.Fill_atAge, Messages.Fill_perYear, Messages.Fill_allBy);

    private final Study study;
    private final Runnable changed;
    private final Composite area;
    private final RoleChoice roles;
    private final PaceNumber number;
    private Combo pace;
    private Combo from;
    private Combo to;
    private Combo successor;
    private Combo ports;
    private Spinner busesPerPort;
    private Combo programme;

    /**
     * A form.
     *
     * @param payer the programme that pays unless another is chosen
     * @param changed is run whenever something else is entered
     */
    FillForm(Composite parent, Study study, Optional<Programme> payer, Runnable changed) {
        this.study = study;
        this.changed = changed;
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(10, 4).applyTo(area);
        Composite how = row(Messages.Fill_replace);
        pace = combo(how, PACES, Pace.PER_YEAR.ordinal());
        number = new PaceNumber(how, study, this::entered);
        createYears();
        roles = new RoleChoice(area, role -> role == Role.ROUTE);
        roles.listen(this::entered);
        createBuys(payer);
        enable();
    }

    private void createYears() {
        Composite years = row(Messages.Fill_from);
        Settings settings = study.getSettings();
        List<String> all = IntStream.range(0, settings.getHorizonYears())
                .mapToObj(y -> String.valueOf(settings.getBaseYear() + y)).toList();
        from = combo(years, all, Math.min(1, all.size() - 1));
        new Label(years, SWT.NONE).setText(Messages.Fill_to);
        to = combo(years, all, all.size() - 1);
    }

    private void createBuys(Optional<Programme> payer) {
        successor = combo(row(Messages.Fill_buy), List.of(Messages.Fill_electric, Messages.Fill_engine), 0);
        Composite portRow = row(Messages.Fill_ports);
        ports = combo(portRow, named(Messages.Fill_portsStay, study.getDepot().getPortTypes()), 0);
        new Label(portRow, SWT.NONE).setText(Messages.Fill_share);
        busesPerPort = new Spinner(portRow, SWT.BORDER);
        busesPerPort.setValues(TENTHS, 1, MOST_BUSES_PER_PORT, 1, 1, TENTHS);
        busesPerPort.addListener(SWT.Selection, e -> entered());
        programme = combo(row(Messages.Fill_programme), named(Messages.Fill_noProgramme, study.getProgrammes()),
                payer.map(p -> study.getProgrammes().indexOf(p) + 1).orElse(0));
    }

    private static List<String> named(String none, List<? extends EObject> elements) {
        return Stream.concat(Stream.of(none), elements.stream().map(ElementNames::of)).toList();
    }

    private Composite row(String label) {
        return FormRow.of(area, label);
    }

    private Combo combo(Composite parent, List<String> texts, int chosen) {
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(texts.toArray(String[]::new));
        combo.select(chosen);
        combo.addListener(SWT.Selection, e -> entered());
        return combo;
    }

    private void entered() {
        enable();
        changed.run();
    }

    /** What has no effect cannot be entered. */
    private void enable() {
        number.show(pace());
        ports.setEnabled(isElectric());
        programme.setEnabled(isElectric());
        busesPerPort.setEnabled(isElectric() && ports.getSelectionIndex() > 0);
    }

    private Pace pace() {
        return Pace.values()[pace.getSelectionIndex()];
    }

    private boolean isElectric() {
        return successor.getSelectionIndex() == 0;
    }

    /** Why there is no rule; blank when there is one. */
    String refusal() {
        if (to.getSelectionIndex() < from.getSelectionIndex()) {
            return Messages.Fill_yearsBackwards;
        }
        return roles.chosen().isEmpty() ? Messages.Fill_noPlaces : "";
    }

    /** The rule; empty when the entries make none. */
    Optional<FillRule> rule() {
        return refusal().isEmpty() ? Optional.of(new FillRule(pace(), number.value(), from.getSelectionIndex(),
                to.getSelectionIndex(), isElectric(), roles.chosen(), portRule())) : Optional.empty();
    }

    private PortRule portRule() {
        return busesPerPort.isEnabled() ? new PortRule(OptionalInt.of(ports.getSelectionIndex() - 1),
                busesPerPort.getSelection() / (double) TENTHS) : PortRule.NONE;
    }

    /** The programme that pays, if one is chosen. */
    Optional<Programme> programme() {
        int chosen = programme.isEnabled() ? programme.getSelectionIndex() - 1 : -1;
        return chosen < 0 ? Optional.empty() : Optional.of(study.getProgrammes().get(chosen));
    }
}
