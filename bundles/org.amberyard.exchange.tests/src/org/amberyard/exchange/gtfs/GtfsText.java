package org.amberyard.exchange.gtfs;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A schedule for tests, of an invented agency whose stops lie on the equator and a meridian, a hundredth of a degree apart. */
final class GtfsText {
    /** A hundredth of a degree of a great circle, km. */
    static final double STEP_KM = Math.toRadians(0.01) * 6371.0088;

    private final Map<String, String> tables = new LinkedHashMap<>();

    GtfsText() {
        table("agency.txt", "agency_id,agency_name,agency_url,agency_timezone\nA,Vale Transit,http://vale.example,America/Chicago\n");
        table("routes.txt", "route_id,agency_id,route_short_name,route_long_name,route_type\nr12,A,12,Mill Road,3\nr14,A,,Hill,3\n");
        table("calendar.txt", "service_id,monday,tuesday,wednesday,thursday,friday,saturday,sunday,start_date,end_date\n"
                + "WK,1,1,1,1,1,0,0,20260901,20261030\nSCH,1,1,1,1,1,0,0,20260901,20261030\nSA,0,0,0,0,0,1,0,20260901,20261030\n");
        table("calendar_dates.txt", "service_id,date,exception_type\nWK,20260907,2\nSCH,20260907,2\nSCH,20261012,2\n");
        table("stops.txt", "stop_id,stop_name,stop_lat,stop_lon\na,A,0,0\nb,B,0,0.01\nc,\"C, the third\",0,0.02\nd,D,0,0.03\ny,Yard,0.01,0\n");
        table("trips.txt", "route_id,service_id,trip_id,block_id,shape_id\nr12,WK,t1,B1,s1\nr14,SCH,t2,B1,\nr12,WK,t3,B1,s1\n"
                + "r12,WK,n1,B2,\nr12,WK,n2,B2,\nr12,SA,x1,B1,\nr14,WK,u1,,\n");
        table("stop_times.txt", "trip_id,arrival_time,departure_time,stop_id,stop_sequence,pickup_type,drop_off_type\n"
                + "t1,6:30:00,6:30:00,a,1,0,1\nt1,6:34:00,6:35:00,b,5,,\nt1,,,c,7,1,1\nt1,06:45:00,06:45:00,d,9,1,0\n"
                + "t2,07:10:30,07:10:30,d,2,,\nt2,07:00:00,07:00:30,a,1,,\n"
                + "t3,17:00:00,17:00:00,a,1,,\nt3,17:20:00,17:20:00,d,2,,\n"
                + "n1,23:30:00,23:30:00,a,1,,\nn1,23:50:00,23:50:00,d,2,,\nn2,24:10:00,24:10:00,d,1,,\nn2,24:30:00,24:30:00,a,2,,\n"
                + "x1,09:00:00,09:00:00,a,1,,\nx1,09:20:00,09:20:00,c,2,,\nu1,10:00:00,10:00:00,a,1,,\nu1,10:20:00,10:20:00,c,2,,\n");
        table("shapes.txt", "shape_id,shape_pt_lat,shape_pt_lon,shape_pt_sequence\ns1,0,0.03,4\ns1,0,0,1\ns1,0.01,0,2\ns1,0.01,0.03,3\n");
    }

    GtfsText table(String name, String text) {
        tables.put(name, text);
        return this;
    }

    GtfsText without(String name) {
        tables.remove(name);
        return this;
    }

    GtfsText replace(String name, String old, String text) {
        String before = tables.get(name);
        if (!before.contains(old)) {
            throw new IllegalArgumentException(old + " is not in " + name);
        }
        return table(name, before.replace(old, text));
    }

    Path folder(Path parent) throws IOException {
        Path folder = Files.createTempDirectory(parent, "gtfs");
        for (Map.Entry<String, String> table : tables.entrySet()) {
            Files.writeString(folder.resolve(table.getKey()), table.getValue());
        }
        return folder;
    }

    byte[] bytes(String name) {
        return tables.get(name).getBytes(StandardCharsets.UTF_8);
    }

    Path zip(Path file, String prefix) throws IOException {
        try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (String name : tables.keySet()) {
                zip.putNextEntry(new ZipEntry(prefix + name));
                zip.write(bytes(name));
                zip.closeEntry();
            }
        }
        return file;
    }
}
