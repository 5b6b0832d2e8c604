package org.amberyard.workbench.measurements;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.study.LogChoice;
import org.amberyard.workbench.fields.FieldRefusal;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Which logs of a type take part: by their days, by where they are from, and by bus. */
final class LogChooser {
    private static final int DAY_WIDTH = 90;
    private static final int LIST_WIDTH = 200;
    private static final int COLUMNS = 8;

    private final Study study;
    private final Text from;
    private final Text until;
    private final Combo sources;
    private final Combo buses;
    private ElectricType shown;
    private List<String> offeredSources = List.of();
    private List<Bus> offeredBuses = List.of();

    /** @param changed is run whenever other logs are chosen */
    LogChooser(Composite parent, Study study, Runnable changed) {
        this.study = study;
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).applyTo(area);
        sources = list(area, Messages.Logs_source, changed);
        buses = list(area, Messages.Logs_bus, changed);
        from = day(area, Messages.Logs_from, changed);
        until = day(area, Messages.Logs_until, changed);
    }

    private static Combo list(Composite area, String label, Runnable changed) {
        new Label(area, SWT.NONE).setText(label);
        Combo list = new Combo(area, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().hint(LIST_WIDTH, SWT.DEFAULT).applyTo(list);
        list.addListener(SWT.Selection, e -> changed.run());
        return list;
    }

    private static Text day(Composite area, String label, Runnable changed) {
        new Label(area, SWT.NONE).setText(label);
        Text text = new Text(area, SWT.BORDER);
        text.setMessage(Messages.Logs_anyDay);
        text.setToolTipText(Messages.Logs_day_tip);
        GridDataFactory.fillDefaults().hint(DAY_WIDTH, SWT.DEFAULT).applyTo(text);
        text.addListener(SWT.Modify, e -> changed.run());
        return text;
    }

    /** The choice among the logs of a type. */
    LogChoice of(ElectricType type) throws FieldRefusal {
        if (type != shown) {
            shown = type;
            offer();
        }
        int source = sources.getSelectionIndex() - 1;
        int bus = buses.getSelectionIndex() - 1;
        return new LogChoice(day(from), day(until), source < 0 ? Optional.empty() : Optional.of(offeredSources.get(source)),
                bus < 0 ? Optional.empty() : Optional.of(offeredBuses.get(bus)));
    }

    private void offer() {
        List<ConsumptionLog> logs = study.getConsumptionLogs().stream().filter(l -> l.getType() == shown).toList();
        offeredSources = logs.stream().map(LogChoice::source).distinct().toList();
        offeredBuses = logs.stream().map(ConsumptionLog::getBus).filter(b -> b != null).distinct().toList();
        fill(sources, Messages.Logs_allSources, offeredSources.stream().map(s -> s.isEmpty() ? Messages.Logs_noSource : s).toList());
        fill(buses, Messages.Logs_allBuses, offeredBuses.stream().map(ElementNames::of).toList());
    }

    private static void fill(Combo list, String all, List<String> names) {
        List<String> items = new ArrayList<>(List.of(all));
        items.addAll(names);
        list.setItems(items.toArray(String[]::new));
        list.select(0);
        list.setEnabled(names.size() > 1);
    }

    private static Optional<LocalDate> day(Text text) throws FieldRefusal {
        Optional<LocalDate> day = IsoDay.of(text.getText());
        if (day.isEmpty() && !text.getText().isBlank()) {
            throw new FieldRefusal(NLS.bind(Messages.Logs_noDay, text.getText()));
        }
        return day;
    }
}
