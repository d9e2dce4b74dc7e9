//! One request in, one plan out.
//!
//! ```text
//! assess [FILE]                 a request from a file or from standard input; the answer as JSON
//! assess --text [--lang es]     the plan as text
//! assess --lines                JSON Lines in and out, all cores, order kept
//! assess --schema               JSON Schema of requests and answers
//! ```

mod text;

use std::io::{BufRead, Read, Write};
use std::process::ExitCode;
use winterseam::climate::Atlas;
use winterseam::error::FieldError;
use winterseam::wire::{self, Tree, problem};
use winterseam::words::{Language, render};

const USAGE: &str = "assess [--text] [--lang en|es] [--lines | --schema] [FILE]";
/// Requests that one round of the stream holds.
const ROUND: usize = 256;

/// What was asked for on the command line.
#[derive(Default)]
struct Asked {
    text: bool,
    lines: bool,
    schema: bool,
    language: Language,
    file: Option<String>,
}

fn main() -> ExitCode {
    match asked(std::env::args().skip(1)).and_then(|asked| run(&asked)) {
        Ok(code) => code,
        Err(why) => {
            eprintln!("{why}");
            ExitCode::FAILURE
        }
    }
}

fn asked(mut words: impl Iterator<Item = String>) -> Result<Asked, String> {
    let mut asked = Asked::default();
    while let Some(word) = words.next() {
        match word.as_str() {
            "--text" => asked.text = true,
            "--lines" => asked.lines = true,
            "--schema" => asked.schema = true,
            "--lang" => {
                let tag = words.next().ok_or(USAGE)?;
                asked.language = Language::from_tag(&tag).ok_or("languages: en, es")?;
            }
            file if !file.starts_with("--") && asked.file.is_none() => {
                asked.file = Some(word);
            }
            _ => return Err(USAGE.to_owned()),
        }
    }
    Ok(asked)
}

fn run(asked: &Asked) -> Result<ExitCode, String> {
    if asked.schema {
        print!("{}", schema());
        return Ok(ExitCode::SUCCESS);
    }
    let input: Box<dyn BufRead + Send> = match &asked.file {
        Some(file) => {
            let open = std::fs::File::open(file).map_err(|why| format!("{file}: {why}"))?;
            Box::new(std::io::BufReader::new(open))
        }
        None => Box::new(std::io::BufReader::new(std::io::stdin())),
    };
    if asked.lines { stream(input, asked.language) } else { one(input, asked) }
}

/// With the feature `schema` made anew, for the tool that writes the file; else as it is built in.
#[cfg(feature = "schema")]
fn schema() -> String {
    wire::made_schema()
}

#[cfg(not(feature = "schema"))]
fn schema() -> &'static str {
    wire::schema()
}

fn one(mut input: impl Read, asked: &Asked) -> Result<ExitCode, String> {
    let mut request = String::new();
    input.read_to_string(&mut request).map_err(|why| why.to_string())?;
    let answer = Tree::from_json(&request)
        .and_then(|request| wire::assess(&request, Some(Atlas::embedded())));
    match answer {
        Ok(answer) if asked.text => print!("{}", text::plan(&answer, asked.language)),
        Ok(answer) => println!("{}", pretty(&answer)),
        Err(errors) => {
            println!("{}", pretty(&refusal(&errors, asked.language)));
            return Ok(ExitCode::FAILURE);
        }
    }
    Ok(ExitCode::SUCCESS)
}

fn pretty(value: &impl serde::Serialize) -> String {
    serde_json::to_string_pretty(value).expect("answers are plain data")
}

fn refusal(errors: &[FieldError], language: Language) -> serde_json::Value {
    let problems: Vec<_> =
        errors.iter().map(|error| problem(error, |phrase| render(phrase, language))).collect();
    serde_json::json!({ "errors": problems })
}

/// Answers line by line on all cores, a round at a time, in the order of the requests.
fn stream(input: impl BufRead, language: Language) -> Result<ExitCode, String> {
    let mut output = std::io::BufWriter::new(std::io::stdout());
    let mut lines = input.lines();
    loop {
        let round: Vec<String> =
            lines.by_ref().take(ROUND).collect::<Result<_, _>>().map_err(|why| why.to_string())?;
        if round.is_empty() {
            break;
        }
        for answer in answers(&round, language) {
            writeln!(output, "{answer}").map_err(|why| why.to_string())?;
        }
        output.flush().map_err(|why| why.to_string())?;
    }
    Ok(ExitCode::SUCCESS)
}

fn answers(round: &[String], language: Language) -> Vec<String> {
    let cores = std::thread::available_parallelism().map_or(1, std::num::NonZero::get);
    let share = round.len().div_ceil(cores);
    std::thread::scope(|scope| {
        let workers: Vec<_> = round
            .chunks(share)
            .map(|part| scope.spawn(|| part.iter().map(|line| answer(line, language)).collect()))
            .collect();
        workers
            .into_iter()
            .flat_map(|worker| -> Vec<String> { worker.join().expect("no request panics") })
            .collect()
    })
}

fn answer(line: &str, language: Language) -> String {
    let answer =
        Tree::from_json(line).and_then(|request| wire::assess(&request, Some(Atlas::embedded())));
    match answer {
        Ok(answer) => serde_json::to_string(&answer).expect("answers are plain data"),
        Err(errors) => refusal(&errors, language).to_string(),
    }
}
