package org.amberyard.exchange;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.function.ToDoubleFunction;

/** Makes Green Button files for tests, of invented readings. */
final class GreenButtonFile {
    static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    static final String OPEN = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<feed xmlns=\"http://www.w3.org/2005/Atom\">\n"
            + "<id>urn:uuid:0</id><title>Made for a test</title>\n";
    static final String CLOSE = "</feed>\n";
    /** Six hours behind UTC; daylight saving from the second Sunday of March to the first of November, at 2 h. */
    static final String CLOCK = entry("/LocalTimeParameters/1", "/LocalTimeParameters", "Clock", "<espi:LocalTimeParameters>"
            + "<espi:dstEndRule>B40E2000</espi:dstEndRule><espi:dstOffset>3600</espi:dstOffset>"
            + "<espi:dstStartRule>360E2000</espi:dstStartRule><espi:tzOffset>-21600</espi:tzOffset></espi:LocalTimeParameters>");
    static final String POINT = entry("/UsagePoint/1", "/UsagePoint", "Bus garage", "<espi:UsagePoint><espi:ServiceCategory>"
            + "<espi:kind>0</espi:kind></espi:ServiceCategory></espi:UsagePoint>", "/UsagePoint/1/MeterReading",
            "/LocalTimeParameters/1");

    private GreenButtonFile() {
    }

    static String entry(String self, String up, String title, String content, String... related) {
        StringBuilder links = new StringBuilder("<link rel=\"self\" href=\"" + self + "\"/><link rel=\"up\" href=\"" + up + "\"/>");
        for (String href : related) {
            links.append("<link rel=\"related\" href=\"").append(href).append("\"/>");
        }
        return "<entry><id>urn:x</id>" + links + "<title>" + title + "</title><content xmlns:espi=\"http://naesb.org/espi\">" + content
                + "</content></entry>\n";
    }

    static String type(int number, int uom, int power, int flow, int behaviour, int lengthS) {
        return entry("/ReadingType/" + number, "/ReadingType", "Type", "<espi:ReadingType><espi:accumulationBehaviour>" + behaviour
                + "</espi:accumulationBehaviour><espi:commodity>1</espi:commodity><espi:flowDirection>" + flow
                + "</espi:flowDirection><espi:intervalLength>" + lengthS + "</espi:intervalLength><espi:powerOfTenMultiplier>"
                + power + "</espi:powerOfTenMultiplier><espi:uom>" + uom + "</espi:uom></espi:ReadingType>");
    }

    static String meter(int number, String title) {
        String self = "/UsagePoint/1/MeterReading/" + number;
        return entry(self, "/UsagePoint/1/MeterReading", title, "<espi:MeterReading/>", self + "/IntervalBlock",
                "/ReadingType/" + number);
    }

    static String block(int meter, String readings) {
        String up = "/UsagePoint/1/MeterReading/" + meter + "/IntervalBlock";
        return entry(up + "/1", up, "Block", "<espi:IntervalBlock><espi:interval><espi:duration>86400</espi:duration>"
                + "<espi:start>0</espi:start></espi:interval>\n" + readings + "</espi:IntervalBlock>");
    }

    static String reading(long start, int lengthS, String value) {
        return "<espi:IntervalReading><espi:ReadingQuality><espi:quality>8</espi:quality></espi:ReadingQuality><espi:timePeriod>"
                + "<espi:duration>" + lengthS + "</espi:duration><espi:start>" + start + "</espi:start></espi:timePeriod><espi:value>"
                + value + "</espi:value></espi:IntervalReading>\n";
    }

    /** Readings of a load from a moment to another, by what it is at each. */
    static String readings(ZonedDateTime from, ZonedDateTime to, int lengthS, ToDoubleFunction<ZonedDateTime> value) {
        StringBuilder text = new StringBuilder();
        for (long s = from.toEpochSecond(); s < to.toEpochSecond(); s += lengthS) {
            text.append(reading(s, lengthS, String.valueOf(Math.round(
                    value.applyAsDouble(Instant.ofEpochSecond(s).atZone(from.getZone()))))));
        }
        return text.toString();
    }
}
