/** What a conversion saves in carbon dioxide equivalents, as ranges, by dated factors. */
package wainbook.handover.carbon;
