package org.amberyard.workbench.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.BusSteps;
import org.amberyard.workbench.fields.Marks;
import org.amberyard.workbench.grid.Blocks;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.CellRefusal;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.StudySession;

/** Buses as rows, years as columns; a cell shows what stands there and takes the steps of the plan. */
final class PlanGridModel implements GridModel {

    private static final List<BusColumn> LABELS = List.of(BusColumn.values());

    private final StudySession session;
    private final PlanBoard board;
    private final Marks marks;
    private TypeLooks looks;
    private CellWords words;
    private List<Bus> rows = List.of();
    private Comparator<Bus> order;

    PlanGridModel(StudySession session) {
        this.session = session;
        this.board = new PlanBoard(session.study());
        this.marks = new Marks(session);
        update(null, Optional.empty());
    }

    /** Reads a plan and results again; null for no plan. */
    void update(Plan plan, Optional<StudyResult> result) {
        looks = new TypeLooks(session.study());
        words = new CellWords(board, looks);
        board.update(plan, result);
        List<Bus> buses = plan == null ? List.of() : session.study().getBuses();
        // Rows keep the places that the last sort gave them, so that an edit does not make its row jump away.
        List<Bus> kept = new ArrayList<>(order == null ? buses : rows);
        kept.retainAll(buses);
        buses.stream().filter(b -> !kept.contains(b)).forEach(kept::add);
        rows = kept;
    }

    PlanBoard board() {
        return board;
    }

    TypeLooks looks() {
        return looks;
    }

    Bus bus(int row) {
        return rows.get(row);
    }

    /** True for the columns of years. */
    boolean isYear(int column) {
        return column >= LABELS.size();
    }

    /** Fiscal year of a column. */
    int year(int column) {
        return board.firstYear() + column - LABELS.size();
    }

    /** Column of a fiscal year. */
    int column(int year) {
        return year - board.firstYear() + LABELS.size();
    }

    private Standing at(int row, int column) {
        return board.at(bus(row), year(column));
    }

    private Optional<BusSteps.Step> step(int row, int column) {
        return isYear(column) ? board.steps(bus(row)).in(year(column)) : Optional.empty();
    }

    @Override
    public int rows() {
        return rows.size();
    }

    @Override
    public int columns() {
        return LABELS.size() + board.years();
    }

    @Override
    public String header(int column) {
        return isYear(column) ? String.valueOf(year(column)) : LABELS.get(column).label();
    }

    @Override
    public String headerTip(int column) {
        return isYear(column) ? words.year(rows, year(column)) : LABELS.get(column).meaning();
    }

    @Override
    public int headerLines() {
        return 1;
    }

    @Override
    public String text(int row, int column) {
        return isYear(column) ? words.cell(at(row, column)) : LABELS.get(column).text(bus(row), board.firstYear(), looks);
    }

    /** Of years only the steps are copied: pasted elsewhere, they do the same there. */
    @Override
    public String fullText(int row, int column) {
        return isYear(column) ? step(row, column).map(StepText::of).orElse("")
                : LABELS.get(column).fullText(bus(row), board.firstYear());
    }

    @Override
    public String tip(int row, int column) {
        return words(row, column);
    }

    @Override
    public String words(int row, int column) {
        return isYear(column) ? words.sentence(bus(row), year(column))
                : LABELS.get(column).label() + ": " + LABELS.get(column).fullText(bus(row), board.firstYear());
    }

    @Override
    public boolean isFigure(int row, int column) {
        return !isYear(column) && LABELS.get(column) == BusColumn.AGE;
    }

    @Override
    public int frozenColumns() {
        return LABELS.size();
    }

    @Override
    public CellLook look(int row, int column) {
        if (!isYear(column)) {
            return CellLook.PLAIN;
        }
        Standing standing = at(row, column);
        boolean byPlan = step(row, column).isPresent();
        Palette ground = standing.bus().map(looks::ground).orElse(Palette.PAPER);
        return new CellLook(ground, byPlan ? Palette.INK : Palette.MUTED, byPlan ? Palette.INK : null);
    }

    @Override
    public Optional<CellMark> mark(int row, int column) {
        return isYear(column) ? step(row, column).flatMap(s -> Optional.ofNullable(s.element())).flatMap(marks::of)
                : Optional.empty();
    }

    @Override
    public boolean isEditable(int row, int column) {
        return isYear(column) && row < rows.size();
    }

    @Override
    public boolean isCompact() {
        return true;
    }

    @Override
    public Object subject(int row, int column) {
        return row < rows.size() ? List.of(board.plan().orElseThrow(), bus(row), header(column)) : List.of();
    }

    @Override
    public List<String> choices(int row, int column) {
        return isYear(column) && row < rows.size() ? StepText.choices(bus(row), looks) : List.of();
    }

    @Override
    public List<CellRefusal> put(int row, int column, List<List<String>> block) throws CellRefusal {
        Blocks.checkFits(this, row, column, block);
        Map<Bus, BusSteps> changed = new HashMap<>();
        List<CellRefusal> refused = new ArrayList<>();
        boolean anyYear = false;
        for (int i = 0; i < block.size(); i++) {
            for (int j = 0; j < block.get(i).size(); j++) {
                if (isYear(column + j)) {
                    anyYear = true;
                    put(changed, row + i, column + j, block.get(i).get(j)).ifPresent(refused::add);
                }
            }
        }
        if (!anyYear) {
            throw new CellRefusal(Messages.Cell_notHere, "", row, column);
        }
        new PlanEdits(session).write(board.plan().orElseThrow(), changed.values());
        return Blocks.told(refused, block);
    }

    private Optional<CellRefusal> put(Map<Bus, BusSteps> changed, int row, int column, String text) {
        if (text == null) {
            return Optional.empty();
        }
        Bus bus = bus(row);
        try {
            BusSteps before = changed.getOrDefault(bus, board.steps(bus));
            changed.put(bus, StepText.entered(before, year(column), text, session.study(), looks));
            return Optional.empty();
        } catch (StepText.Refusal refusal) {
            return Optional.of(new CellRefusal(refusal.getMessage(), text, row, column));
        }
    }

    @Override
    public void clear(int top, int bottom, List<Integer> columns) {
        List<BusSteps> changed = new ArrayList<>();
        for (int row = top; row <= Math.min(bottom, rows.size() - 1); row++) {
            BusSteps steps = board.steps(bus(row));
            for (int column : columns) {
                steps = column < LABELS.size() ? steps : steps.without(year(column));
            }
            changed.add(steps);
        }
        board.plan().ifPresent(plan -> new PlanEdits(session).write(plan, changed));
    }

    @Override
    public boolean isSortable() {
        return true;
    }

    @Override
    public void sort(int column, boolean ascending) {
        Comparator<Bus> up = isYear(column) ? Comparator.comparing(b -> words.cell(board.at(b, year(column))))
                : LABELS.get(column).order();
        order = ascending ? up : up.reversed();
        rows = rows.stream().sorted(order).toList();
    }
}
