"""Workbooks as another library makes and reads them.

make FOLDER  writes some workbooks there
facts FILE…  prints what each file says, as JSON: file -> list of [kind, where, what]
"""

import datetime
import json
import sys
import warnings
from pathlib import Path

import openpyxl
from openpyxl.chart import BarChart, LineChart, Reference, ScatterChart, Series
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule, ColorScaleRule, FormulaRule
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.utils import get_column_letter
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation

warnings.simplefilter("ignore")


def names_of(book):
    """The list of names, which versions from 3.1 on keep by name."""
    names = book.defined_names
    return list(names.definedName if hasattr(names, "definedName") else names.values())


def define(book, name, meaning):
    one = DefinedName(name, attr_text=meaning)
    if hasattr(book.defined_names, "append"):
        book.defined_names.append(one)
    else:
        book.defined_names[name] = one


def daily(book):
    sheet = book.active
    sheet.title = "Läufe 2025"
    sheet.append(["Tag", "Volumen", "Druck", "Summe"])
    first = datetime.datetime(2025, 1, 6)
    for n in range(1, 31):
        sheet.append([first + datetime.timedelta(days=n), 400 + 7 * n, 1.5 + n / 50, f"=SUM(B$2:B{n + 1})"])
        sheet.cell(n + 1, 1).number_format = "dd.mm.yyyy"
        sheet.cell(n + 1, 2).number_format = "#,##0.0"
    sheet.freeze_panes = "B2"
    sheet.column_dimensions["A"].width = 14
    sheet.row_dimensions[1].height = 28
    for cell in sheet[1]:
        cell.font = Font(bold=True, color="FF1F3864")
        cell.fill = PatternFill("solid", fgColor="FFDDEBF7")
        cell.alignment = Alignment(horizontal="center", vertical="center", wrap_text=True)
        cell.border = Border(bottom=Side(style="medium", color="FF1F3864"))
    define(book, "volumes", "'Läufe 2025'!$B$2:$B$31")
    define(book, "share", "0.05")
    other = book.create_sheet("Auswertung")
    other["A1"] = "=AVERAGE(volumes)*(1+share)"
    other["A2"] = "=MAX('Läufe 2025'!C2:C31)"
    other["A3"] = '=COUNTIF(\'Läufe 2025\'!B2:B31,">500")'


def ruled(book):
    sheet = book.active
    for n in range(1, 11):
        sheet.append([n, n * n, f"text {n}"])
    sheet.conditional_formatting.add("A1:A10", CellIsRule(operator="greaterThan", formula=["5"], font=Font(bold=True)))
    sheet.conditional_formatting.add("B1:B10", FormulaRule(formula=["$A1=3"], fill=PatternFill(bgColor="FFFFC7CE")))
    sheet.conditional_formatting.add("B1:B10", ColorScaleRule(start_type="min", end_type="max", start_color="FFFFFF", end_color="63BE7B"))
    for rule in (
        DataValidation(type="list", formula1='"red,green"', allow_blank=True, showErrorMessage=True),
        DataValidation(type="whole", operator="between", formula1="1", formula2="9", showErrorMessage=True),
    ):
        sheet.add_data_validation(rule)
        rule.add("D1:D3" if rule.type == "list" else "A1:A10")
    sheet.merge_cells("E1:F2")
    sheet["E1"] = "merged"
    sheet["C1"].comment = Comment("A note", "Someone")
    sheet["C2"].hyperlink = "https://example.com/"


def drawn(book):
    sheet = book.active
    sheet.title = "Figures"
    sheet.append(["day", "one", "two"])
    for n in range(1, 9):
        sheet.append([n, n * n, 20 - n])
    for place, chart in (("E1", BarChart()), ("E16", LineChart())):
        chart.title = "Volumes"
        chart.add_data(Reference(sheet, min_col=2, max_col=3, min_row=1, max_row=9), titles_from_data=True)
        chart.set_categories(Reference(sheet, min_col=1, min_row=2, max_row=9))
        sheet.add_chart(chart, place)
    chart = ScatterChart()
    across = Reference(sheet, min_col=1, min_row=2, max_row=9)
    chart.series.append(Series(Reference(sheet, min_col=2, min_row=1, max_row=9), across, title_from_data=True))
    sheet.add_chart(chart, "E31")


MADE = {"daily runs": daily, "rules and notes": ruled, "charts": drawn}


def look_of(cell):
    font, fill, line, side = cell.font, cell.fill, cell.border, cell.alignment
    # A pattern's colour, or the word "gradient": only whether it stays the same matters here.
    ground = f"{fill.fill_type} {fill.fgColor.rgb}" if getattr(fill, "fill_type", None) in ("solid", None) else str(fill.fill_type)
    marks = [font.b, font.i, font.u or "", font.strike, font.sz or 11.0, font.name or "Calibri", font.vertAlign or ""]
    lines = [getattr(getattr(line, name), "style", None) or "" for name in ("left", "right", "top", "bottom")]
    return {
        "number format": cell.number_format,
        "font": " ".join(str(mark or "-") for mark in marks),
        "fill": ground,
        "border": " ".join(one or "-" for one in lines),
        "alignment": f"{side.horizontal or 'general'} {side.vertical or 'bottom'} {bool(side.wrap_text)} {int(side.indent)} {side.textRotation}",
    }


USUAL = {"number format": "General", "font": "- - - - 11.0 Calibri -", "fill": "None 00000000", "border": "- - - -", "alignment": "general bottom False 0 0"}


def facts_of(path):
    facts = []
    book, answers = openpyxl.load_workbook(path), openpyxl.load_workbook(path, data_only=True)
    for one in names_of(book):
        facts.append(["name", str(one.name), str(one.attr_text).replace("'", "")])
    for sheet in book.worksheets:
        told = lambda kind, place, what: facts.append([kind, f"{sheet.title}!{place}", str(what)])
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "f":
                    told("formula", cell.coordinate, getattr(cell.value, "text", cell.value))
                answer = answers[sheet.title][cell.coordinate].value
                if type(answer) is datetime.date:
                    answer = datetime.datetime(answer.year, answer.month, answer.day)
                if isinstance(answer, str):
                    # The library undoes this code in shared texts, and not in those that stand in their cells.
                    answer = answer.replace("_x005F_", "_")
                if answer is not None:
                    told("value", cell.coordinate, repr(answer) if not isinstance(answer, (int, float)) or isinstance(answer, bool) else float(answer))
                for kind, what in look_of(cell).items():
                    if what != USUAL[kind]:
                        told(kind, cell.coordinate, what)
                if cell.comment:
                    told("note", cell.coordinate, cell.comment.text)
                if cell.hyperlink:
                    told("link", cell.coordinate, cell.hyperlink.target or cell.hyperlink.location)
        for merged in sheet.merged_cells.ranges:
            told("merged cells", str(merged), "merged")
        for chart in sheet._charts:
            told("chart", type(chart).__name__, len(chart.series))
        if sheet.freeze_panes:
            told("frozen panes", "", sheet.freeze_panes)
        for letter, one in sheet.column_dimensions.items():
            for column in range(one.min or 1, min(one.max or 1, 256) + 1):
                if one.customWidth:
                    told("column width", get_column_letter(column), one.width)
    return facts


if sys.argv[1] == "make":
    for name, fill in MADE.items():
        workbook = openpyxl.Workbook()
        fill(workbook)
        workbook.save(Path(sys.argv[2]) / f"{name}.xlsx")
else:
    print(json.dumps({name: facts_of(name) for name in sys.argv[2:]}))
