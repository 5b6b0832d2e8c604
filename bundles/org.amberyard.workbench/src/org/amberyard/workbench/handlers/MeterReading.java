package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.MeterImport;
import org.amberyard.model.depot.BuildingMonth;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Reads a meter's interval data in the background. */
public final class MeterReading extends FileReading<MeterImport> {

    private final List<BuildingMonth> bills;

    /** Will read a file and hold it against bills as they are now. */
    public MeterReading(Path file, Collection<BuildingMonth> bills) {
        super(file);
        this.bills = List.copyOf(EcoreUtil.copyAll(bills));
    }

    @Override
    protected MeterImport read(Path path) throws ImportException {
        return MeterImport.read(path, bills);
    }
}
