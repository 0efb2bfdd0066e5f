package org.brakewright.drawing.page;

import org.brakewright.drawing.TitleBlock;

/**
 * What the title block of one page says.
 *
 * @param scale scale and unit
 * @param page number of the page and what it shows
 */
record Legend(TitleBlock title, String scale, String page) {
    static final String TRUE_SCALE = "1:1, mm";
    static final String NOT_TO_SCALE = "not to scale";
}
