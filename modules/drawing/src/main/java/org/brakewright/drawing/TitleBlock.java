package org.brakewright.drawing;

/**
 * What ISO 7200 wants said of a document (mandatory fields, from memory). All is text as it shall be printed; what is
 * empty stays open for ink.
 *
 * @param number identification number
 * @param issued date of issue
 * @param sheet sheet number
 * @param type document type
 */
public record TitleBlock(
        String owner,
        String title,
        String number,
        String issued,
        String sheet,
        String creator,
        String approver,
        String type) {
    public TitleBlock {
        Demand.filled("title", title);
        Demand.filled("number", number);
    }
}
