package org.amberyard.workbench.views;

import org.amberyard.workbench.grid.GridModel;

/** What a grid shows as long as its table is not there: nothing, and no headers of another one. */
public final class NoTable implements GridModel {

    @Override
    public int rows() {
        return 0;
    }

    @Override
    public int columns() {
        return 1;
    }

    @Override
    public String header(int column) {
        return "";
    }

    @Override
    public String text(int row, int column) {
        return "";
    }

    @Override
    public boolean stretchesLast() {
        return true;
    }
}
