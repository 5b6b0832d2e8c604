package org.amberyard.exchange.sheet;

/** The reading of one row: each of its values that is wrong is told, so that a row tells all that is wrong with it. */
final class RowReading {
    private final MappedRow row;
    private final SheetOutcome outcome;
    private boolean sound = true;

    RowReading(MappedRow row, SheetOutcome outcome) {
        this.row = row;
        this.outcome = outcome;
    }

    /** A value of a row, or a rule that it must follow. */
    interface Value<T> {
        /** The value. */
        T get() throws CellFault;
    }

    /** A value; another one where it is wrong, which is told. */
    <T> T of(Value<T> value, T otherwise) {
        try {
            return value.get();
        } catch (CellFault fault) {
            sound = false;
            outcome.problem(row.number(), fault);
            return otherwise;
        }
    }

    /** The number in a column; another one where there is none, or it is wrong, which is told. */
    double number(String id, double otherwise) {
        return of(() -> row.number(id).orElse(otherwise), otherwise);
    }

    /** The number in a column that must have one; 0 where it is wrong, which is told. */
    double required(String id) {
        return of(() -> row.required(id), 0.0);
    }

    /** Tells what is wrong with a cell. */
    void wrong(CellFault fault) {
        of(() -> {
            throw fault;
        }, null);
    }

    /** True as long as nothing was wrong. */
    boolean isSound() {
        return sound;
    }
}
