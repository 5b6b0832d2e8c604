package org.amberyard.workbench.handlers;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.amberyard.exchange.gtfs.GtfsBlock;
import org.amberyard.exchange.gtfs.GtfsChoice;
import org.amberyard.exchange.gtfs.GtfsDays;
import org.amberyard.exchange.gtfs.GtfsFeed;
import org.amberyard.workbench.look.SizedDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/** Asks which days and which blocks of a schedule are wanted. */
public final class ScheduleDialog extends SizedDialog {
    private static final Point SIZE = new Point(640, 560);
    private static final int[] WIDTHS = {170, 330, 70};

    private final GtfsFeed feed;
    private final Set<String> checked = new TreeSet<>();
    private Combo days;
    private Text filter;
    private Table blocks;
    private GtfsChoice choice;

    /** A dialog about a schedule that has been looked into. */
    public ScheduleDialog(Shell parent, GtfsFeed feed) {
        super(parent, Messages.Gtfs_title, SIZE);
        this.feed = feed;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite form = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(form);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        new Label(form, SWT.NONE).setText(Messages.Gtfs_days);
        days = new Combo(form, SWT.READ_ONLY);
        days.setItems(feed.kinds().stream().map(GtfsDays::words).toArray(String[]::new));
        days.select(0);
        days.addListener(SWT.Selection, e -> showOtherDays());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(days);
        new Label(form, SWT.NONE).setText(Messages.Gtfs_filter);
        filter = new Text(form, SWT.SEARCH);
        filter.addListener(SWT.Modify, e -> show());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        blocks = table(form);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(blocks);
        buttons(form);
        Label words = new Label(form, SWT.WRAP);
        words.setText(Messages.Gtfs_choose);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(SIZE.x, SWT.DEFAULT).applyTo(words);
        show();
        return area;
    }

    private Table table(Composite parent) {
        Table table = new Table(parent, SWT.CHECK | SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
        table.setHeaderVisible(true);
        List<String> headers = List.of(Messages.Gtfs_block, Messages.Gtfs_routes, Messages.Gtfs_trips);
        for (int i = 0; i < headers.size(); i++) {
            TableColumn column = new TableColumn(table, i == 2 ? SWT.RIGHT : SWT.NONE);
            column.setText(headers.get(i));
            column.setWidth(WIDTHS[i]);
        }
        table.addListener(SWT.Selection, e -> {
            if (e.detail == SWT.CHECK) {
                check((TableItem) e.item, ((TableItem) e.item).getChecked());
            }
        });
        return table;
    }

    private void buttons(Composite parent) {
        Composite bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(bar);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(bar);
        button(bar, Messages.Choice_all, true);
        button(bar, Messages.Choice_none, false);
    }

    private void button(Composite bar, String text, boolean check) {
        Button button = new Button(bar, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, e -> checkShown(check));
    }

    private void checkShown(boolean check) {
        for (TableItem item : blocks.getItems()) {
            item.setChecked(check);
            check(item, check);
        }
    }

    private void check(TableItem item, boolean check) {
        if (check) {
            checked.add(item.getText(0));
        } else {
            checked.remove(item.getText(0));
        }
        enable();
    }

    private void showOtherDays() {
        checked.clear();
        show();
    }

    private void show() {
        String wanted = filter.getText().strip().toLowerCase(Locale.ROOT);
        blocks.setRedraw(false);
        blocks.removeAll();
        for (GtfsBlock block : feed.blocks(chosenDays())) {
            if (block.words().toLowerCase(Locale.ROOT).contains(wanted)) {
                TableItem item = new TableItem(blocks, SWT.NONE);
                item.setText(new String[] {block.id(), String.join(", ", block.routes()), String.valueOf(block.trips())});
                item.setChecked(checked.contains(block.id()));
            }
        }
        blocks.setRedraw(true);
        enable();
    }

    private GtfsDays chosenDays() {
        return feed.kinds().get(days.getSelectionIndex());
    }

    private void enable() {
        if (getButton(IDialogConstants.OK_ID) != null) {
            getButton(IDialogConstants.OK_ID).setEnabled(!checked.isEmpty());
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        enable();
    }

    @Override
    protected void okPressed() {
        choice = new GtfsChoice(chosenDays(), checked);
        super.okPressed();
    }

    /** What was chosen, once the dialog was closed with OK. */
    public GtfsChoice choice() {
        return choice;
    }
}
