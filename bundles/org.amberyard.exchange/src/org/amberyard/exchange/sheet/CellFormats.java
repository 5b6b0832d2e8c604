package org.amberyard.exchange.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/**
 * What numbers of a workbook's cells mean by the format of their cell: dates, times or numbers.
 *
 * @param styles formats of the workbook; null where it has none
 * @param from1904 true when its days are counted from 1904 instead of 1900
 */
record CellFormats(StylesTable styles, boolean from1904) {
    /** As many digits as a double keeps through a decimal text. */
    private static final MathContext DIGITS = new MathContext(15);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

    /** A number in a cell with the format of a place in the styles. */
    SheetCell cell(double number, int style) {
        return isDate(number, style) ? new SheetCell(SheetCell.Kind.DATE, moment(number))
                : new SheetCell(SheetCell.Kind.NUMBER, new BigDecimal(number).round(DIGITS).stripTrailingZeros().toPlainString());
    }

    private boolean isDate(double number, int style) {
        if (styles == null || style < 0 || style >= styles.getNumCellStyles() || !DateUtil.isValidExcelDate(number)) {
            return false;
        }
        XSSFCellStyle of = styles.getStyleAt(style);
        return DateUtil.isADateFormat(of.getDataFormat(), of.getDataFormatString());
    }

    private String moment(double days) {
        LocalDateTime moment = DateUtil.getLocalDateTime(days, from1904, true);
        String time = TIME.format(moment);
        if (days < 1) {
            return time;
        }
        return moment.toLocalTime().toSecondOfDay() == 0 ? moment.toLocalDate().toString() : moment.toLocalDate() + " " + time;
    }
}
