/** Pages, forms and API of what was taken out and of waste. */
package wainbook.waste.page;
