/** Paper for when the tool is down: numbered forms, a day’s print of open items, and how both are typed in later. */
package wainbook.paper;
