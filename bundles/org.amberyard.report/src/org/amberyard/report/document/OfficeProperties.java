package org.amberyard.report.document;

import java.util.Date;
import java.util.Optional;
import org.amberyard.model.io.SteadyZip;
import org.apache.poi.ooxml.POIXMLProperties;

/** Title, subject and maker of an Office file, without the time of the clock. */
public final class OfficeProperties {
    private OfficeProperties() {
    }

    /** Sets them. */
    public static void set(POIXMLProperties properties, String title, String subject) {
        POIXMLProperties.CoreProperties core = properties.getCoreProperties();
        core.setTitle(title);
        core.setSubjectProperty(subject);
        core.setCreator("Amberyard");
        core.setCreated(Optional.of(new Date(SteadyZip.ALWAYS_MS)));
        core.setModified(Optional.of(new Date(SteadyZip.ALWAYS_MS)));
        core.setLastModifiedByUser("Amberyard");
        properties.getExtendedProperties().setApplication("Amberyard");
    }
}
